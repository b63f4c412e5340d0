package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.drillsheaf.Problem;
import org.drillsheaf.Problem.Severity;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.check.Coverage;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.drillsheaf.drill.library.Layers;

/**
 * What the check of a catalogue found, for people and for machines.
 *
 * @param problems those of reading first, then those of the check
 */
record CheckReport(Catalogue catalogue, Layers layers, List<Problem> problems, Coverage coverage) {
    CheckReport {
        problems = List.copyOf(problems);
    }

    long count(Severity severity) {
        return problems.stream().filter(p -> p.severity() == severity).count();
    }

    /**
     * Errors, warnings and advice with their counts, then how far the catalogue reaches.
     *
     * @param everyGoal also what each condition leaves for each goal
     */
    void print(PrintWriter out, boolean everyGoal) {
        for (Severity severity : Severity.values()) {
            if (count(severity) > 0) {
                out.println(title(severity) + " (" + count(severity) + ")");
                problems.stream().filter(p -> p.severity() == severity).forEach(p -> out.println("  " + p.message()));
                out.println();
            }
        }
        out.println("Coverage by the drills in use");
        CoverageTable table = new CoverageTable(
                coverage, List.copyOf(catalogue.words().positions().keySet()));
        table.goalsAndConditions().forEach(out::println);
        out.println();
        if (everyGoal) {
            table.goalsByCondition().forEach(out::println);
            out.println();
        }
        if (!layers.house().isEmpty()) {
            out.println("The clinic's own folder: " + layers.count(Standing.REPLACED) + " drills replaced, "
                    + layers.count(Standing.ADDED) + " added, " + layers.count(Standing.WITHDRAWN) + " withdrawn.");
        }
        languages()
                .forEach((language, spoken) ->
                        out.println("Language " + language + ": " + spoken.drills() + " drills in use speak it whole, "
                                + spoken.unreviewed() + " of them by a machine and not reviewed."));
        out.println(catalogue.drills().size() + " drills, " + catalogue.inUse().size() + " of them in use: "
                + count(Severity.ERROR) + " errors, " + count(Severity.WARNING) + " warnings, "
                + count(Severity.ADVICE) + " pieces of advice.");
    }

    /**
     * How far the catalogue is translated.
     *
     * @param drills in use and whole in this language
     * @param unreviewed those that a machine translated and nobody has gone through
     */
    private record Spoken(long drills, long unreviewed) {}

    private Map<String, Spoken> languages() {
        Set<String> languages = new TreeSet<>();
        catalogue.inUse().forEach(d -> languages.addAll(d.name().byLanguage().keySet()));
        Map<String, Spoken> spoken = new TreeMap<>();
        for (String language : languages) {
            List<Drill> whole =
                    catalogue.inUse().stream().filter(d -> d.speaks(language)).toList();
            long unreviewed = whole.stream()
                    .filter(d ->
                            d.translations().stream().anyMatch(t -> t.language().equals(language) && t.isUnreviewed()))
                    .count();
            spoken.put(language, new Spoken(whole.size(), unreviewed));
        }
        return spoken;
    }

    private static String title(Severity severity) {
        return switch (severity) {
            case ERROR -> "Errors";
            case WARNING -> "Warnings";
            case ADVICE -> "Advice";
        };
    }

    String json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("drills", catalogue.drills().size());
        json.put("in-use", catalogue.inUse().size());
        json.put("house", house());
        for (Severity severity : Severity.values()) {
            json.put(
                    title(severity).toLowerCase(Locale.ROOT),
                    problems.stream()
                            .filter(p -> p.severity() == severity)
                            .map(CheckReport::problem)
                            .toList());
        }
        Map<String, Object> languages = new TreeMap<>();
        languages()
                .forEach((language, spoken) ->
                        languages.put(language, Map.of("drills", spoken.drills(), "unreviewed", spoken.unreviewed())));
        json.put("languages", languages);
        json.put("goals", coverage.byGoalAndPosition());
        json.put("conditions", conditions());
        return Json.text(json);
    }

    private Map<String, Object> house() {
        Map<String, Object> json = new LinkedHashMap<>();
        for (Standing standing : List.of(Standing.REPLACED, Standing.ADDED, Standing.WITHDRAWN)) {
            json.put(
                    standing.name().toLowerCase(Locale.ROOT),
                    layers.drills().entrySet().stream()
                            .filter(d -> d.getValue().standing() == standing)
                            .map(Map.Entry::getKey)
                            .toList());
        }
        return json;
    }

    static Map<String, Object> problem(Problem problem) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", problem.file());
        json.put("line", problem.line());
        json.put("what", problem.what());
        json.put("remedy", problem.remedy());
        return json;
    }

    private Map<String, Object> conditions() {
        Map<String, Object> json = new TreeMap<>();
        coverage.byCondition().forEach((condition, left) -> {
            Map<String, Object> all = new LinkedHashMap<>();
            left.byPhase()
                    .forEach((phase, choice) ->
                            all.put(phase.id(), Map.of("drills", choice.drills(), "families", choice.families())));
            all.put("goals", left.byGoalAndPosition());
            json.put(condition, all);
        });
        return json;
    }
}
