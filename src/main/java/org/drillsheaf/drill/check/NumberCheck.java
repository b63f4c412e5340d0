package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillsheaf.Problem;
import org.drillsheaf.drill.Breathing;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.DoseRange;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.figure.pose.SolvedSheet;

/** Compares numbers typed into texts with the drill's dose and pose. */
record NumberCheck(Drill drill, Optional<SolvedSheet> sheet) {
    /** The reference stature for lengths in a text that was typed by hand, centimetres. */
    private static final double STATURE = 172;
    /** A typed length may be off by so much, centimetres. */
    private static final double LENGTH_TOLERANCE = 2;

    private static final Pattern NUMBER = Pattern.compile(
            "(\\d+(?:[.,]\\d+)?)\\s*(?:to|–|-|a)?\\s*(\\d+(?:[.,]\\d+)?)?\\s*"
                    + "(seconds?|segundos?|s\\b|breaths?|respiraciones|times|veces|repetitions|repeticiones|rounds|series|"
                    + "steps|pasos|minutes?|minutos?|cm)",
            Pattern.CASE_INSENSITIVE);

    List<Problem> check(TextPiece piece) {
        List<Problem> problems = new ArrayList<>();
        piece.byLanguage().values().forEach(text -> {
            Matcher matcher = NUMBER.matcher(text.replaceAll("\\{[^}]*}", " "));
            while (matcher.find()) {
                String unit = matcher.group(3).toLowerCase(Locale.ROOT);
                for (int group = 1; group <= 2; group++) {
                    String number = matcher.group(group);
                    if (number != null && !agrees(Double.parseDouble(number.replace(',', '.')), unit)) {
                        problems.add(Problem.warning(
                                piece.place().file(),
                                piece.place().line(),
                                "The text says “" + matcher.group().strip() + "”, but " + expected(unit),
                                "Use a placeholder such as {breaths}, or correct text or drill"));
                        return;
                    }
                }
            }
        });
        return problems;
    }

    private boolean agrees(double number, String unit) {
        if (unit.startsWith("s") && !unit.startsWith("st") && !unit.startsWith("ser")) {
            return secondsOfDrill().stream().anyMatch(s -> number >= s.least() - .5 && number <= s.most() + .5);
        }
        if (unit.equals("cm")) {
            return lengths().stream().anyMatch(l -> StrictMath.abs(l - number) <= LENGTH_TOLERANCE);
        }
        if (unit.startsWith("round") || unit.startsWith("serie")) {
            return within(drill.dose().sets(), number);
        }
        boolean minutes = unit.startsWith("minut");
        if (minutes != (drill.dose().count() == Dose.Count.MINUTES)) {
            return minutes; // minutes of rest or waiting are no dose
        }
        return within(drill.dose().each(), number);
    }

    private static boolean within(DoseRange range, double number) {
        return number >= range.least() && number <= range.most();
    }

    private List<Breathing.Seconds> secondsOfDrill() {
        Breathing breathing = drill.breathing();
        DoseRange hold = drill.dose().holdSeconds();
        return List.of(
                breathing.in(),
                breathing.out(),
                breathing.pause(),
                new Breathing.Seconds(hold.least(), hold.most()),
                Breathing.Seconds.of(drill.dose().repetitionSeconds()));
    }

    private List<Double> lengths() {
        return sheet.map(s -> s.distances().values().stream()
                        .map(share -> share * STATURE)
                        .toList())
                .orElse(List.of());
    }

    private String expected(String unit) {
        if (unit.equals("cm")) {
            return lengths().isEmpty()
                    ? "the pose names no distance"
                    : "the pose has "
                            + String.format(Locale.ROOT, "%.0f cm", lengths().get(0));
        }
        Dose dose = drill.dose();
        if (unit.startsWith("s") && !unit.startsWith("st") && !unit.startsWith("ser")) {
            return String.format(
                    Locale.ROOT,
                    "breath and hold of the drill have other seconds (out %.0f to %.0f)",
                    drill.breathing().out().least(),
                    drill.breathing().out().most());
        }
        return "the dose is " + dose.sets().least() + "–" + dose.sets().most() + " × "
                + dose.each().least() + "–" + dose.each().most() + " "
                + dose.count().id();
    }
}
