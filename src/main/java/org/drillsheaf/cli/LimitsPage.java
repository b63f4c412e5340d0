package org.drillsheaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.drill.safety.LimitToConfirm;
import org.drillsheaf.drill.safety.Measure;
import org.drillsheaf.drill.safety.SafetyRules;

/** The page of limits for a licensed clinician to confirm, as Markdown. */
record LimitsPage(SafetyRules rules) {

    List<String> lines() {
        List<LimitToConfirm> limits = LimitToConfirm.of(rules);
        List<String> lines = new ArrayList<>(List.of(
                "# Limits for a licensed clinician to confirm",
                "",
                "Written by `./drillsheaf check --limits-to-confirm` from `shared/conditions.yaml`; a test keeps this"
                        + " page true.",
                "Sources disagree on these, or nobody has re-read the source, or the number is the house's own. Until"
                        + " somebody",
                "who may decide it has done so, each stays at its strict value. The client's own clinician's word"
                        + " always wins.",
                "Rules that name drills or positions rather than numbers stand in the same file."));
        String condition = "-";
        for (LimitToConfirm limit : limits) {
            if (!limit.condition().equals(condition)) {
                condition = limit.condition();
                lines.addAll(List.of(
                        "",
                        "## " + (condition.isEmpty() ? "All conditions" : condition),
                        "",
                        "| limit | strict value now | why it is here | source |",
                        "|---|---|---|---|"));
            }
            lines.add("| " + limit.what() + " | " + limit.strict() + " | " + why(limit) + " | "
                    + limit.source().text() + " |");
        }
        lines.addAll(List.of("", "## What the words of the rules mean", "", "| word | meaning |", "|---|---|"));
        Stream.of(Measure.values())
                .filter(measure -> limits.stream().anyMatch(l -> l.strict().contains(measure.id())))
                .forEach(measure -> lines.add("| " + measure.id() + " | " + measure.words() + " |"));
        return lines;
    }

    private static String why(LimitToConfirm limit) {
        String kind = limit.source().kind().id();
        return limit.disputed() ? "to confirm, " + kind : kind;
    }
}
