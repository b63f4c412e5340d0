package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** What a number counts, by the words for it in English, Spanish and Arabic. */
    private enum Unit {
        SECONDS("seconds?|segundos?|s\\b|ثانية|ثوان"),
        EACH("breaths?|respiraciones|أنفاس|times|veces|مرات|repetitions|repeticiones|steps|pasos|خطوات"),
        ROUNDS("rounds|series|جولات"),
        MINUTES("minutes?|minutos?|دقيقة|دقائق"),
        CENTIMETRES("cm|سم");

        private final String words;

        Unit(String words) {
            this.words = words;
        }
    }

    private static final Pattern NUMBER = Pattern.compile(
            "(\\d+(?:[.,]\\d+)?)\\s*(?:to|–|-|a|إلى)?\\s*(\\d+(?:[.,]\\d+)?)?\\s*(?:"
                    + Stream.of(Unit.values())
                            .map(u -> "(?<" + u.name() + ">" + u.words + ")")
                            .collect(Collectors.joining("|"))
                    + ")",
            Pattern.CASE_INSENSITIVE);

    List<Problem> check(TextPiece piece) {
        List<Problem> problems = new ArrayList<>();
        piece.byLanguage().values().forEach(text -> {
            Matcher matcher = NUMBER.matcher(text.replaceAll("\\{[^}]*}", " "));
            while (matcher.find()) {
                Unit unit = Stream.of(Unit.values())
                        .filter(u -> matcher.group(u.name()) != null)
                        .findFirst()
                        .orElseThrow();
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

    private boolean agrees(double number, Unit unit) {
        boolean countsMinutes = drill.dose().count() == Dose.Count.MINUTES;
        return switch (unit) {
            case SECONDS ->
                secondsOfDrill().stream().anyMatch(s -> number >= s.least() - .5 && number <= s.most() + .5);
            case CENTIMETRES -> lengths().stream().anyMatch(l -> StrictMath.abs(l - number) <= LENGTH_TOLERANCE);
            case ROUNDS -> within(drill.dose().sets(), number);
            // minutes of rest or waiting are no dose
            case MINUTES -> !countsMinutes || within(drill.dose().each(), number);
            case EACH -> !countsMinutes && within(drill.dose().each(), number);
        };
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

    private String expected(Unit unit) {
        Dose dose = drill.dose();
        return switch (unit) {
            case CENTIMETRES ->
                lengths().isEmpty()
                        ? "the pose names no distance"
                        : String.format(
                                Locale.ROOT, "the pose has %.0f cm", lengths().get(0));
            case SECONDS ->
                String.format(
                        Locale.ROOT,
                        "breath and hold of the drill have other seconds (out %.0f to %.0f)",
                        drill.breathing().out().least(),
                        drill.breathing().out().most());
            default ->
                "the dose is " + dose.sets().least() + "–" + dose.sets().most() + " × "
                        + dose.each().least() + "–" + dose.each().most() + " "
                        + dose.count().id();
        };
    }
}
