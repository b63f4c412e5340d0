package org.drillsheaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Source;
import org.drillsheaf.drill.safety.LimitToConfirm;
import org.drillsheaf.drill.safety.Measure;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.saying.Speech;
import org.drillsheaf.screen.NumberToConfirm;

/** The page of limits for a licensed clinician to confirm, as Markdown. */
record LimitsPage(Vocabulary vocabulary) {

    List<String> lines() {
        List<LimitToConfirm> limits = LimitToConfirm.of(vocabulary.library().safetyRules());
        List<String> lines = new ArrayList<>(List.of(
                "# Limits for a licensed clinician to confirm",
                "",
                "Written by `./drillsheaf check --limits-to-confirm` from the files in `shared`; a test keeps this page"
                        + " true.",
                "Sources disagree on these, or nobody has re-read the source, or the number is the house's own. Until"
                        + " somebody",
                "who may decide it has done so, each stays at its strict value. The client's own clinician's word"
                        + " always wins.",
                "Rules that name drills or positions rather than numbers stand in `shared/conditions.yaml`."));
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
        lines.addAll(safetyQuestions());
        lines.addAll(tests());
        lines.addAll(doses());
        lines.addAll(List.of("", "## What the words of the rules mean", "", "| word | meaning |", "|---|---|"));
        Speech speech = vocabulary.speech("en");
        Stream.of(Measure.values())
                .filter(measure -> limits.stream().anyMatch(l -> l.strict().contains(measure.id())))
                .forEach(measure -> lines.add("| " + measure.id() + " | " + speech.say(measure.words()) + " |"));
        return lines;
    }

    private List<String> safetyQuestions() {
        List<String> lines = new ArrayList<>(List.of(
                "",
                "## Safety questions",
                "",
                "| question | what a yes does now | why it is here | source |",
                "|---|---|---|---|"));
        vocabulary.reading().safetyGate().questions().stream()
                .filter(question -> NumberToConfirm.isUnread(question.source()))
                .forEach(question -> lines.add(row(
                        question.text().english(),
                        question.effect().name().toLowerCase(Locale.ROOT)
                                + (question.urgency().words().isEmpty()
                                        ? ""
                                        : ", " + question.urgency().words()),
                        question.source())));
        return lines;
    }

    private List<String> tests() {
        List<String> lines = new ArrayList<>();
        String test = "";
        for (NumberToConfirm number : NumberToConfirm.of(vocabulary.reading().battery())) {
            if (!number.test().equals(test)) {
                test = number.test();
                lines.addAll(List.of(
                        "",
                        "## " + test + " (movement test)",
                        "",
                        "| number | value now | why it is here | source |",
                        "|---|---|---|---|"));
            }
            lines.add(row(number.what(), number.value(), number.source()));
        }
        return lines;
    }

    private List<String> doses() {
        List<String> lines = new ArrayList<>(
                List.of("", "## Doses", "", "| bound | at most now | why it is here | source |", "|---|---|---|---|"));
        new TreeMap<>(vocabulary.builder().doseBounds()).forEach((name, bound) -> {
            if (NumberToConfirm.isUnread(bound.source())) {
                lines.add(row(name, String.valueOf(bound.most()), bound.source()));
            }
        });
        return lines;
    }

    private static String row(String what, String value, Source source) {
        return "| " + what + " | " + value + " | " + source.kind().id() + " | " + source.text() + " |";
    }

    private static String why(LimitToConfirm limit) {
        String kind = limit.source().kind().id();
        return limit.disputed() ? "to confirm, " + kind : kind;
    }
}
