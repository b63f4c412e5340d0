package org.drillsheaf.desk.drill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.check.CatalogueCheck;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.saying.Speech;

/**
 * Looks at one draft as the catalogue check does. Reads no file; safe for several threads.
 *
 * @param today the day that reviews are counted to
 * @param speech words what a safety rule measured
 */
public record DrillCheck(
        Catalogue catalogue,
        SafetyRules rules,
        CatalogueReader reader,
        DrillReader drillReader,
        LocalDate today,
        Speech speech) {

    /**
     * What was found.
     *
     * @param drill empty when the file is not one
     */
    public record Result(Optional<Drill> drill, List<Finding> findings) {
        public Result {
            findings = List.copyOf(findings);
        }

        /** Nothing that forbids to keep the drill. */
        public boolean canBeKept() {
            return drill.isPresent() && findings.stream().noneMatch(Finding::stops);
        }
    }

    public Result look(YamlDocument draft) {
        Problems problems = new Problems();
        Set<String> others = catalogue.drills().stream().map(Drill::id).collect(Collectors.toCollection(HashSet::new));
        others.add(draft.at("/id").asText());
        Optional<Drill> read =
                reader.among(List.of(draft.node()), others, problems).stream().findFirst();
        Optional<Drill> drill = problems.hasErrors() ? Optional.empty() : read;
        List<Problem> all = new ArrayList<>(problems.all());
        drill.ifPresent(
                d -> all.addAll(new CatalogueCheck(catalogue.with(d), rules, drillReader, today, speech).of(d)));
        return new Result(drill, Finding.place(all, draft.node()));
    }
}
