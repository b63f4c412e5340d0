package org.drillsheaf.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problem;
import org.drillsheaf.Problem.Severity;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.library.HouseLayer.Laid;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.exchange.merge.FieldChange;
import org.drillsheaf.exchange.merge.Take;
import org.drillsheaf.exchange.merge.TreeDifference;
import org.drillsheaf.exchange.merge.TreeMerge;

/** Works out what an import would do to the catalogue as it is now. Writes nothing. */
public final class ImportPlanner {
    private static final String WITHDRAWN = "withdrawn";

    private final Layers now;
    private final Optional<Take> take;
    private final IncomingCheck check;
    private final Map<DrillChange, IncomingDrill> changes = new LinkedHashMap<>();
    private final List<DrillChange> undecided = new ArrayList<>();
    private final List<Problem> rejected = new ArrayList<>();
    private final List<Problem> notes = new ArrayList<>();
    private int same;

    private ImportPlanner(Layers now, Optional<Take> take, IncomingCheck check) {
        this.now = now;
        this.take = take;
        this.check = check;
    }

    /**
     * @param now the catalogue with the clinic's own drills
     * @param take which side counts where both changed the same field; empty to be told
     */
    public static ImportPlan plan(Layers now, Incoming incoming, Optional<Take> take, IncomingCheck check) {
        ImportPlanner planner = new ImportPlanner(now, take, check);
        planner.rejected.addAll(incoming.rejected());
        planner.notes.addAll(incoming.notes());
        incoming.drills().forEach(planner::merge);
        planner.rejectUnreadable();
        if (planner.reject(check::look)) {
            planner.rejectUnreadable();
        }
        return new ImportPlan(
                List.copyOf(planner.changes.keySet()),
                planner.undecided,
                planner.rejected,
                planner.notes,
                planner.same);
    }

    private void merge(IncomingDrill incoming) {
        Optional<Laid> mine = Optional.ofNullable(now.drills().get(incoming.id()));
        JsonNode before =
                mine.map(m -> DrillEdition.withoutBase(m.node().json())).orElse(MissingNode.getInstance());
        TreeMerge.Result result = TreeMerge.merge(
                // What is not there now is added, whatever it was before.
                mine.isEmpty()
                        ? List.of(before)
                        : incoming.ancestors().stream()
                                .map(DrillEdition::withoutBase)
                                .toList(),
                before,
                DrillEdition.withoutBase(incoming.drill()),
                take);
        List<FieldChange> clashes = result.clashes().stream()
                .filter(c -> !c.pointer().equals("/" + DrillEdition.REVISION))
                .toList();
        boolean isCountClash = clashes.size() < result.clashes().size();
        ObjectNode after = DrillEdition.with(
                result.merged(),
                DrillEdition.revision(incoming, mine, result.merged(), isCountClash),
                DrillEdition.basedOn(mine));
        DrillChange change = change(incoming, mine, before, after, clashes);
        if (!clashes.isEmpty() && take.isEmpty()) {
            undecided.add(change);
        } else if (mine.isPresent() && change.fields().isEmpty()) {
            same++;
        } else {
            changes.put(change, incoming);
        }
    }

    private static DrillChange change(
            IncomingDrill incoming, Optional<Laid> mine, JsonNode before, ObjectNode after, List<FieldChange> clashes) {
        return new DrillChange(
                incoming.id(),
                kind(before, after),
                name(after),
                mine.isEmpty() ? List.of() : fields(before, after),
                clashes,
                after,
                file(incoming, mine, after));
    }

    private static DrillChange.Kind kind(JsonNode before, JsonNode after) {
        if (before.isMissingNode()) {
            return DrillChange.Kind.ADDED;
        }
        boolean withdraws = after.path("status").asText().equals(WITHDRAWN)
                && !before.path("status").asText().equals(WITHDRAWN);
        return withdraws ? DrillChange.Kind.WITHDRAWN : DrillChange.Kind.CHANGED;
    }

    private static String name(JsonNode drill) {
        JsonNode name = drill.path("name");
        return name.isObject() && !name.isEmpty() ? name.iterator().next().asText() : name.asText();
    }

    /** The count of the revisions follows from the others, and is told only when it stands alone. */
    private static List<FieldChange> fields(JsonNode before, JsonNode after) {
        List<FieldChange> all = TreeDifference.between(before, DrillEdition.withoutBase(after));
        List<FieldChange> others = all.stream()
                .filter(f -> !f.pointer().equals("/" + DrillEdition.REVISION))
                .toList();
        return others.isEmpty() ? all : others;
    }

    private static Optional<String> file(IncomingDrill incoming, Optional<Laid> mine, ObjectNode after) {
        Optional<JsonNode> starter = mine.flatMap(Laid::starter).map(YamlNode::json);
        if (starter.filter(s -> DrillEdition.withoutBase(s).equals(DrillEdition.withoutBase(after)))
                .isPresent()) {
            return Optional.empty();
        }
        Optional<ObjectNode> withdrawal = starter.flatMap(s -> DrillEdition.withdrawal(after, s));
        if (withdrawal.isPresent()) {
            return withdrawal.map(DrillYaml::write);
        }
        return Optional.of(
                incoming.text().filter(text -> after.equals(incoming.drill())).orElseGet(() -> DrillYaml.write(after)));
    }

    /** One way of looking at drills. */
    private interface Look {
        List<Problem> at(List<YamlNode> drills, Set<String> ids);
    }

    /** Takes out what has errors; true when a drill went that another one may have named. */
    private boolean reject(Look look) {
        Map<String, IncomingDrill> byName = byName();
        Set<String> ids = new HashSet<>(now.drills().keySet());
        List<YamlNode> drills = new ArrayList<>();
        changes.forEach((change, incoming) -> {
            ids.add(change.id());
            drills.add(incoming.placed(change.result()));
        });
        Set<String> bad = new HashSet<>();
        for (Problem problem : look.at(drills, ids)) {
            IncomingDrill incoming = byName.get(problem.file());
            if (incoming != null && problem.severity() == Severity.ERROR) {
                rejected.add(incoming.origin().told(problem));
                bad.add(incoming.id());
            } else if (incoming != null && problem.severity() == Severity.WARNING) {
                notes.add(incoming.origin().told(problem));
            }
        }
        boolean missesNow = changes.keySet().stream()
                .anyMatch(change -> bad.contains(change.id()) && change.kind() == DrillChange.Kind.ADDED);
        changes.keySet().removeIf(change -> bad.contains(change.id()));
        return missesNow;
    }

    private void rejectUnreadable() {
        boolean again = true;
        while (again) {
            again = reject(check::read);
        }
    }

    private Map<String, IncomingDrill> byName() {
        Map<String, IncomingDrill> byName = new LinkedHashMap<>();
        changes.values().forEach(incoming -> byName.put(incoming.origin().name(), incoming));
        return byName;
    }
}
