package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillsheaf.Source;
import org.drillsheaf.client.Sex;

/**
 * A number of the screen that is the house's own, or that nobody has read in its source yet.
 *
 * @param test name for the coach
 * @param what the number means in the test
 * @param value with its unit
 */
public record NumberToConfirm(String test, String what, String value, Source source) {
    private static final Set<Source.Kind> UNREAD = Set.of(Source.Kind.HOUSE, Source.Kind.MEMORY);
    /** Sources say so in their words when only a part of them is remembered. */
    private static final String REMEMBERED = "memory";
    /** A mark without an upper age is read as holding to an age that nobody reaches. */
    private static final int OLDEST = 120;

    /** Whether nobody stands behind it but the house or somebody's memory. */
    public static boolean isUnread(Source source) {
        return UNREAD.contains(source.kind()) || source.text().contains(REMEMBERED);
    }

    /** All of them, in the order in which the tests are taken: the marks of each test, then its errors. */
    public static List<NumberToConfirm> of(Battery battery) {
        List<NumberToConfirm> all = new ArrayList<>();
        for (MovementTest test : battery.tests().values()) {
            marks(test).forEach(all::add);
            for (MeasurementError error : test.errors()) {
                if (!error.ofThisClinic()) {
                    String value = Shown.value(error.sem().doubleValue(), test.unit());
                    all.add(new NumberToConfirm(
                            test.name(), "error of one measurement" + whose(error.sex()), value, error.source()));
                }
            }
        }
        return all.stream().filter(number -> isUnread(number.source)).toList();
    }

    private static Stream<NumberToConfirm> marks(MovementTest test) {
        Norm norm = test.norm();
        if (norm instanceof Norm.Threshold threshold) {
            return Stream.concat(
                    marks(test, threshold.higherIsFuller() ? "limited below" : "limited above", threshold.cutoffs()),
                    marks(test, threshold.higherIsFuller() ? "beyond from" : "beyond up to", threshold.beyond()));
        }
        if (norm instanceof Norm.Range range) {
            return Stream.concat(
                    marks(test, range.lowWord() + " below", range.low()),
                    marks(test, range.highWord() + " above", range.high()));
        }
        if (norm instanceof Norm.Count count) {
            return marks(test, count.word() + " from", count.cutoffs());
        }
        if (norm instanceof Norm.Pair pair) {
            return pair.parts().stream()
                    .map(part -> new NumberToConfirm(
                            test.name(),
                            pair.word() + " from, " + part.name().english(),
                            Shown.value(part.mark(), test.unit()),
                            part.source()));
        }
        return Stream.empty();
    }

    private static Stream<NumberToConfirm> marks(MovementTest test, String what, List<Norm.Mark> marks) {
        return marks.stream()
                .map(mark -> new NumberToConfirm(
                        test.name(),
                        what + whose(mark.sex()) + ages(mark),
                        Shown.value(mark.value(), test.unit()),
                        mark.source()));
    }

    private static String whose(Optional<Sex> sex) {
        return sex.map(s -> ", " + s.name().toLowerCase(Locale.ROOT)).orElse("");
    }

    private static String ages(Norm.Mark mark) {
        boolean from = mark.fromAge() > 0;
        boolean to = mark.toAge() < OLDEST;
        if (from && to) {
            return ", " + mark.fromAge() + " to " + mark.toAge() + " years";
        }
        if (from) {
            return ", from " + mark.fromAge() + " years";
        }
        return to ? ", to " + mark.toAge() + " years" : "";
    }
}
