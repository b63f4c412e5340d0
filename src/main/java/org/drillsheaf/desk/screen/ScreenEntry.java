package org.drillsheaf.desk.screen;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.screen.Battery;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.Norm;
import org.drillsheaf.store.record.Content;

/**
 * One field of the screen as it is written in a visit. Reads and writes only its own place, and keeps whatever else stands
 * beside the value.
 *
 * @param part for a test that measures two things
 */
public record ScreenEntry(MovementTest test, Optional<Side> side, Optional<String> part) {

    /** Every field of a test, in the order in which they are typed. */
    public static List<ScreenEntry> of(MovementTest test) {
        if (test.norm() instanceof Norm.Pair pair) {
            return pair.parts().stream()
                    .map(p -> new ScreenEntry(test, Optional.empty(), Optional.of(p.id())))
                    .toList();
        }
        return test.places().stream()
                .map(side -> new ScreenEntry(test, side, Optional.empty()))
                .toList();
    }

    private String testPath() {
        return "/screen/" + test.id();
    }

    /** Where the measurement of this side stands. */
    private String place() {
        return side.map(s -> testPath() + "/" + s.id()).orElse(testPath());
    }

    private String valuePath(Content visit) {
        if (part.isPresent()) {
            return place() + "/" + part.get();
        }
        return visit.value(place()).isPresent() ? place() : place() + "/value";
    }

    /** The number as written; empty when not tested. */
    public Optional<String> value(Content visit) {
        return visit.value(valuePath(visit)).filter(v -> !v.equals("not-tested"));
    }

    public boolean isPainful(Content visit) {
        return visit.value(place() + "/pain")
                .filter(v -> !v.equals("false") && !v.equals("no"))
                .isPresent();
    }

    /** A yes-or-no mark of the test beside the value. */
    public Optional<Boolean> mark(Content visit, String name) {
        return visit.value(place() + "/" + name).map(v -> v.equals("true") || v.equals("yes"));
    }

    /** The visit with this number in its place. */
    public Content with(Content visit, double number) {
        Content opened = opened(visit);
        return opened.with(opened.value(place()).isPresent() && part.isEmpty() ? place() : valueOrMap(opened), number);
    }

    private String valueOrMap(Content visit) {
        if (part.isPresent()) {
            return place() + "/" + part.get();
        }
        boolean map = visit.below(place()).isPresent() && visit.value(place()).isEmpty();
        return map || side.isEmpty() ? place() + "/value" : place();
    }

    public Content withPain(Content visit, boolean pain) {
        if (!pain) {
            return tidy(visit.without(place() + "/pain"));
        }
        return asMap(opened(visit)).with(place() + "/pain", true);
    }

    public Content withMark(Content visit, String name, boolean truth) {
        return asMap(opened(visit)).with(place() + "/" + name, truth);
    }

    /** The visit without value and pain here; what else stands in the test stays. */
    public Content withoutValue(Content visit) {
        Content without = visit.without(valuePath(visit));
        if (part.isEmpty()) {
            without = without.without(place() + "/pain")
                    .without(place() + "/or-more")
                    .without(place() + "/or-less");
        }
        return tidy(without);
    }

    /** With the unit in it, so that something can be written. */
    private Content opened(Content visit) {
        Content base = visit.value(testPath()).isPresent() ? visit.without(testPath()) : visit;
        return base.value(testPath() + "/unit").isPresent()
                ? base
                : base.with(testPath() + "/unit", test.unit().id());
    }

    private Content asMap(Content visit) {
        Optional<Content> plain = visit.value(place()).isPresent() ? visit.below(place()) : Optional.empty();
        return plain.map(number -> visit.without(place()).with(place() + "/value", number))
                .orElse(visit);
    }

    /** A test of which only the unit is left is not there at all. */
    private Content tidy(Content visit) {
        Content tidied = visit;
        if (side.isPresent()
                && tidied.below(place())
                        .map(c -> c.fields().keySet().equals(java.util.Set.of("")))
                        .orElse(false)
                && tidied.value(place()).isEmpty()) {
            tidied = tidied.without(place());
        }
        boolean onlyUnit = tidied.below(testPath())
                .map(c -> c.fields().keySet().stream().allMatch(f -> f.equals("/unit") || f.isEmpty()))
                .orElse(false);
        return onlyUnit ? tidied.without(testPath()) : tidied;
    }

    /** Whether a number can be true here. */
    public boolean isPossible(double number) {
        return number >= test.lowest() && number <= test.highest();
    }

    /** Whether the test is measured as finely as this. */
    public boolean isOnStep(double number) {
        return java.math.BigDecimal.valueOf(number).remainder(test.step()).signum() == 0;
    }

    /** The visit without tests of which only one of two values, or only marks, are there; the same object when there is none. */
    public static Content withoutHalves(Content visit, Battery battery) {
        Content whole = visit;
        for (MovementTest test : battery.tests().values()) {
            for (ScreenEntry entry : of(test)) {
                String place = entry.part().isPresent() ? entry.testPath() : entry.place();
                boolean there =
                        whole.below(place).isPresent() && whole.value(place).isEmpty();
                if (there
                        && entry.value(whole).isEmpty()
                        && !entry.isPainful(whole)
                        && !(test.norm() instanceof Norm.Count)) {
                    whole = whole.without(place);
                }
            }
        }
        return whole;
    }
}
