package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Speech;
import org.drillsheaf.screen.Contradiction;
import org.drillsheaf.screen.Evidence;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.Layers;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.NextTest;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.Restriction;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.screen.SafetyReading;
import org.drillsheaf.screen.ScreenCondition;
import org.drillsheaf.screen.Verdict;

/** A reading on the terminal: compact by default, in full when explained. Every word of the trade comes from the reading itself. */
final class ReadingText {
    private static final int TEST_WIDTH = 36;
    private static final int VALUE_WIDTH = 26;

    private final PrintWriter out;
    private final Speech speech;
    private final boolean explain;

    ReadingText(PrintWriter out, Speech speech, boolean explain) {
        this.out = out;
        this.speech = speech;
        this.explain = explain;
    }

    void print(Client client, Reading reading) {
        out.println(client.name() + " · " + reading.age() + " years · " + Words.number(client.statureCentimetres())
                + " cm · visit of " + Words.day(reading.date()));
        safety(reading.safety());
        findings(reading);
        presentations(reading);
        remarks(reading);
    }

    private void safety(SafetyReading safety) {
        out.println("Safety: " + say(safety.status().words()));
        for (SafetyReading.Flag flag : safety.stopping()) {
            out.println("  stops: " + say(flag.words()));
        }
        for (SafetyReading.Flag flag : safety.holding()) {
            out.println("  waits for a clinician's word: " + say(flag.words()));
        }
        for (SafetyQuestion question : safety.unanswered()) {
            out.println(
                    "  still to ask (" + question.id() + "): " + question.text().english());
        }
        if (explain) {
            safety.released().forEach(flag -> out.println("  released in writing: " + say(flag.words())));
        }
        safety.advice().forEach(advice -> out.println("  " + say(advice)));
        for (String condition : safety.suggestedConditions()) {
            out.println("  an answer points to the condition " + condition + ", which is not in the file");
        }
    }

    private void findings(Reading reading) {
        if (reading.findings().isEmpty()) {
            return;
        }
        out.println();
        out.println("Findings");
        Map<MovementTest, Map<Optional<Side>, Finding>> byTest = new LinkedHashMap<>();
        for (Finding finding : reading.findings()) {
            byTest.computeIfAbsent(finding.test(), t -> new LinkedHashMap<>()).put(finding.side(), finding);
        }
        StringBuilder untested = new StringBuilder();
        byTest.forEach((test, sides) -> {
            boolean nothing = sides.values().stream().allMatch(f -> f.kind() == FindingKind.NOT_TESTED);
            if (nothing && !explain) {
                untested.append(untested.length() == 0 ? "" : ", ")
                        .append(test.name().toLowerCase(Locale.ROOT));
            } else if (explain) {
                sides.values().forEach(f -> out.println("  " + say(f.words())));
            } else {
                out.println(row(test, sides));
            }
        });
        if (untested.length() > 0) {
            out.println("  not tested: " + untested);
        }
    }

    private String row(MovementTest test, Map<Optional<Side>, Finding> sides) {
        StringBuilder row = new StringBuilder("  ").append(pad(test.name(), TEST_WIDTH));
        sides.forEach((side, finding) -> {
            String value = finding.values().isEmpty() ? "" : say(finding.values()) + "  ";
            String mark = side.map(s -> s == Side.LEFT ? "L " : "R ").orElse("  ");
            row.append(pad(mark + value + say(finding.kindWords()), VALUE_WIDTH));
        });
        return row.toString().stripTrailing();
    }

    private void presentations(Reading reading) {
        if (reading.presentations().isEmpty()) {
            return;
        }
        out.println();
        out.println("Reading: " + headline(reading) + " (a working guess for choosing drills, not a diagnosis)");
        Layers layers = reading.layers();
        line(layers.underneathWords());
        line(layers.onTopWords());
        layers.local().forEach(local -> line(local.words()));
        for (PresentationReading presentation : reading.presentations()) {
            boolean shown = explain || presentation.verdict() != Verdict.NOT_SUPPORTED;
            if (shown
                    && !(presentation.evidence().isEmpty()
                            && presentation.openBecause().isEmpty())) {
                presentation(presentation);
            }
        }
        for (Contradiction contradiction : reading.contradictions()) {
            out.println("  does not fit together: " + say(contradiction.findings()));
            out.println("    " + say(contradiction.meaning()) + " → " + say(contradiction.nextStep()));
        }
        reading.nextTest().ifPresent(this::nextTest);
        reading.standIn()
                .ifPresent(
                        q -> out.println("    ask instead of " + q.barredTest().name() + ": " + q.question()));
    }

    private String headline(Reading reading) {
        List<String> held = reading.supported().stream().map(p -> say(p.name())).toList();
        if (!held.isEmpty()) {
            return String.join("; ", held) + (reading.lax() ? "; laxity at its cut-off" : "");
        }
        List<String> open =
                reading.open().stream().map(p -> say(p.nameWithVerdict())).toList();
        return (open.isEmpty() ? "nothing is held" : "open: " + String.join("; ", open))
                + (reading.lax() ? "; laxity at its cut-off" : "");
    }

    private void presentation(PresentationReading presentation) {
        out.println("  " + say(presentation.name()) + ": " + say(presentation.verdictWords()));
        evidence(presentation, Evidence.Kind.FOR, "+");
        evidence(presentation, Evidence.Kind.AGAINST, "−");
        if (explain) {
            evidence(presentation, Evidence.Kind.NOT_KNOWN, "?");
        }
        if (!presentation.openBecause().isEmpty()) {
            out.println(
                    "    ? keeps it open: " + say(Saying.joined(Saying.Joint.SEMICOLON, presentation.openBecause())));
        }
    }

    private void evidence(PresentationReading presentation, Evidence.Kind kind, String mark) {
        for (Evidence evidence : presentation.evidence(kind)) {
            out.println("    " + mark + " " + say(evidence.words()));
        }
    }

    private void nextTest(NextTest next) {
        out.println("  would settle most: " + say(next.reason()));
        if (explain) {
            out.println(String.format(Locale.ROOT, "      %.2f bits, %d minutes", next.bits(), next.minutes()));
        }
    }

    private void remarks(Reading reading) {
        if (reading.restrictions().isEmpty()
                && reading.conditions().isEmpty()
                && reading.remarks().isEmpty()) {
            return;
        }
        out.println();
        out.println("What holds besides");
        Map<Saying, List<Restriction>> because = reading.restrictions().stream()
                .collect(Collectors.groupingBy(Restriction::because, LinkedHashMap::new, Collectors.toList()));
        because.forEach((reason, restrictions) -> out.println("  " + say(reason) + ": "
                + restrictions.stream().map(r -> say(r.words())).collect(Collectors.joining("; "))));
        for (ScreenCondition condition : reading.conditions()) {
            out.println("  condition " + condition.id() + ": " + say(condition.because())
                    + condition.declined().map(r -> " (declined: " + r + ")").orElse(""));
        }
        reading.remarks().forEach(remark -> out.println("  " + say(remark)));
    }

    private void line(Saying saying) {
        if (!saying.isEmpty()) {
            out.println("  " + say(saying));
        }
    }

    private String say(Saying saying) {
        return speech.say(saying);
    }

    private static String pad(String text, int width) {
        return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
    }
}
