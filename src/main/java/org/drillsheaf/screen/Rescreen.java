package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.screen.rule.Truth;

/**
 * Compares two readings of one client, side by side. A change counts only from the smallest real change on; pain that was not
 * there before is never progress, nor is more movement than expected.
 */
public record Rescreen(Battery battery, Presentations presentations) {

    public Comparison compare(Client client, Reading before, Reading now) {
        List<TestChange> changes = new ArrayList<>();
        for (MovementTest test : battery.tests().values()) {
            Scale scale = new Scale(test, client.sex(), now.age(), BigDecimal.ONE);
            for (Optional<Side> side : test.places()) {
                Optional<Finding> old = before.finding(test.id(), side);
                Optional<Finding> fresh = now.finding(test.id(), side);
                if (isTaken(old) || isTaken(fresh)) {
                    for (Optional<String> part : parts(test)) {
                        changes.add(
                                change(scale, side, part, old.orElseThrow(), fresh.orElseThrow(), isLax(before, now)));
                    }
                }
            }
        }
        return new Comparison(
                before.date(), now.date(), changes, sideOrder(before, now, changes), remarks(before, now));
    }

    private static boolean isTaken(Optional<Finding> finding) {
        return finding.flatMap(Finding::measurement).isPresent();
    }

    private static List<Optional<String>> parts(MovementTest test) {
        return test.norm() instanceof Norm.Pair pair
                ? pair.parts().stream().map(p -> Optional.of(p.id())).toList()
                : List.of(Optional.empty());
    }

    private boolean isLax(Reading before, Reading now) {
        return before.verdict("extension-lax-give") == Verdict.SUPPORTED
                || now.verdict("extension-lax-give") == Verdict.SUPPORTED
                || now.lax();
    }

    private TestChange change(
            Scale scale, Optional<Side> side, Optional<String> part, Finding old, Finding fresh, boolean lax) {
        MovementTest test = scale.test();
        Span then = span(scale, old, part);
        Span today = span(scale, fresh, part);
        boolean newPain = fresh.kind() == FindingKind.PAINFUL
                && old.measurement().isPresent()
                && old.kind() != FindingKind.PAINFUL;
        TestChange.Kind kind = kind(scale, then, today);
        String remark = "";
        if (newPain) {
            remark = "pain that was not there before; pain appearing is never progress";
        } else if (kind == TestChange.Kind.BETTER
                && lax
                && presentations.notProgressWhenLax().contains(test.id())) {
            kind = TestChange.Kind.NO_REAL_CHANGE;
            remark = "no measure of progress in a lax body";
        } else if (kind == TestChange.Kind.WORSE
                && lax
                && presentations.notProgressWhenLax().contains(test.id())) {
            kind = TestChange.Kind.NO_REAL_CHANGE;
            remark = "less far is neutral in a lax body";
        } else if (kind == TestChange.Kind.BETTER && fresh.beyond().isTrue()) {
            kind = TestChange.Kind.NO_REAL_CHANGE;
            remark = "further than expected is not progress";
        }
        String before = shown(test, old, part);
        String now = shown(test, fresh, part);
        String smallest = smallestChange(scale);
        String difference = difference(test, old, fresh, part);
        String name = test.name()
                + side.map(s -> ", " + s.id()).orElse("")
                + part.map(p -> ", " + p).orElse("");
        String words = name + ": " + (before.isEmpty() ? "not tested" : before) + " → "
                + (now.isEmpty() ? "not tested" : now) + ", " + kind.words()
                + (difference.isEmpty() ? "" : " (" + difference + ", counts from " + smallest + ")")
                + (remark.isEmpty() ? "" : "; " + remark);
        return new TestChange(test, side, part, kind, before, now, difference, smallest, newPain, words);
    }

    /** A painful, barred or missing value is not known. */
    private static Span span(Scale scale, Finding finding, Optional<String> part) {
        return finding.kind() == FindingKind.NOT_TESTED ? Span.UNKNOWN : scale.span(finding.measurement(), part);
    }

    private static TestChange.Kind kind(Scale scale, Span then, Span today) {
        Norm norm = scale.test().norm();
        if (then.isUnknown() || today.isUnknown() || norm instanceof Norm.Count) {
            return TestChange.Kind.NOT_KNOWN;
        }
        if (norm instanceof Norm.Range range) {
            return ofRange(scale, range, then, today);
        }
        // Both values of the stance are the better the smaller they are.
        boolean turned = norm instanceof Norm.Pair;
        Span old = turned ? then.negated() : then;
        Span fresh = turned ? today.negated() : today;
        return kind(scale.agreed(v -> fresh.minus(old).passes(v.change(), 0)), scale.agreed(v -> old.minus(fresh)
                .passes(v.change(), 0)));
    }

    private static TestChange.Kind kind(Truth better, Truth worse) {
        if (better.isTrue()) {
            return TestChange.Kind.BETTER;
        }
        if (worse.isTrue()) {
            return TestChange.Kind.WORSE;
        }
        return better.isUnknown() || worse.isUnknown() ? TestChange.Kind.NOT_KNOWN : TestChange.Kind.NO_REAL_CHANGE;
    }

    /** Better when it moves by a real change towards the expected range and does not leave it at the other end. */
    private static TestChange.Kind ofRange(Scale scale, Norm.Range range, Span then, Span today) {
        if (then.low() != then.high() || today.low() != today.high()) {
            return TestChange.Kind.NOT_KNOWN;
        }
        return kind(
                scale.agreed(v -> isNearer(scale, range, v, then.low(), today.low())),
                scale.agreed(v -> isNearer(scale, range, v, today.low(), then.low())));
    }

    private static Truth isNearer(Scale scale, Norm.Range range, Scale.Variant variant, long from, long to) {
        long before = outside(scale, range, variant, from);
        long after = outside(scale, range, variant, to);
        boolean crossed = before * after < 0;
        return Truth.of(!crossed
                && StrictMath.abs(after) < StrictMath.abs(before)
                && StrictMath.abs(from - to) >= variant.change());
    }

    /** How far outside the range, minus below it, plus above it; 0 inside. */
    private static long outside(Scale scale, Norm.Range range, Scale.Variant variant, long value) {
        long low = scale.mark(range.low(), variant)
                .map(m -> scale.fuller(m.value()))
                .orElse(value);
        long high = scale.mark(range.high(), variant)
                .map(m -> scale.fuller(m.value()))
                .orElse(value);
        return value < low ? value - low : Math.max(0, value - high);
    }

    private static String shown(MovementTest test, Finding finding, Optional<String> part) {
        String pain = finding.kind() == FindingKind.PAINFUL ? " painful" : "";
        if (part.isPresent()) {
            return finding.measurement()
                    .flatMap(m -> Optional.ofNullable(m.parts().get(part.get())))
                    .map(v -> Shown.value(v, test.unit()) + pain)
                    .orElse("");
        }
        return finding.values().isEmpty() ? pain.strip() : finding.values() + pain;
    }

    private static String difference(MovementTest test, Finding old, Finding fresh, Optional<String> part) {
        Optional<Double> then = value(old, part);
        Optional<Double> now = value(fresh, part);
        return then.isPresent() && now.isPresent()
                ? Shown.difference(
                        BigDecimal.valueOf(now.get())
                                .subtract(BigDecimal.valueOf(then.get()))
                                .doubleValue(),
                        test.unit())
                : "";
    }

    private static Optional<Double> value(Finding finding, Optional<String> part) {
        return finding.measurement()
                .flatMap(m -> part.isPresent() ? Optional.ofNullable(m.parts().get(part.get())) : m.value());
    }

    private static String smallestChange(Scale scale) {
        MovementTest test = scale.test();
        long most =
                scale.variants().stream().mapToLong(Scale.Variant::change).max().orElse(0);
        return most == 0
                ? "no number"
                : Shown.value(test.step().multiply(BigDecimal.valueOf(most)).doubleValue(), test.unit());
    }

    /** Which side came back first, in the tests that are expected to show it. */
    private List<String> sideOrder(Reading before, Reading now, List<TestChange> changes) {
        List<String> sentences = new ArrayList<>();
        Side first = before.layers().expectedFirst();
        Side last = first.opposite();
        for (String id : List.of("thigh-drop", "hip-extension")) {
            Optional<TestChange> early = find(changes, id, first);
            Optional<TestChange> late = find(changes, id, last);
            if (early.isPresent() && late.isPresent()) {
                sentence(early.get(), late.get(), first, before).ifPresent(sentences::add);
            }
        }
        oneSideForward(before, now).ifPresent(sentences::add);
        return sentences;
    }

    private static Optional<TestChange> find(List<TestChange> changes, String id, Side side) {
        return changes.stream()
                .filter(c -> c.test().id().equals(id) && c.side().equals(Optional.of(side)))
                .findFirst();
    }

    private static Optional<String> sentence(TestChange early, TestChange late, Side first, Reading before) {
        String test = early.test().name() + ": ";
        String side = first.id();
        if (early.kind() == TestChange.Kind.WORSE) {
            return Optional.of(test + "the " + side + " side is less by a real change: step back, do not work on the "
                    + first.opposite().id());
        }
        if (early.gained() && late.gained()) {
            return Optional.of(test + "both sides");
        }
        if (early.gained()) {
            return Optional.of(test + "as expected, " + side + " side first; this is progress, not a fault");
        }
        if (late.gained() && before.layers().underneath().isPresent()) {
            return Optional.of(test
                    + "unusual order: measure again and check the hold of the pelvis; the second measurement counts");
        }
        return Optional.empty();
    }

    /** One side forward after a reading of both sides: the layer underneath, or something to measure again. */
    private static Optional<String> oneSideForward(Reading before, Reading now) {
        boolean wasBoth = before.verdict("extension-both-sides") == Verdict.SUPPORTED
                || before.verdict("extension-lax-give") == Verdict.SUPPORTED
                || before.verdict("extension-swayed") == Verdict.SUPPORTED;
        Optional<Side> side = now.supported().stream()
                .filter(p -> p.id().equals("one-side-forward"))
                .flatMap(p -> p.side().stream())
                .findFirst();
        if (!wasBoth || side.isEmpty()) {
            return Optional.empty();
        }
        boolean asExpected = side.get() != before.layers().expectedFirst();
        return Optional.of(
                asExpected
                        ? "The layer underneath shows: one side forward, "
                                + side.get().id() + ". This is progress"
                        : "One side forward on the " + side.get().id()
                                + ", where it did not lie underneath: measure again before naming it");
    }

    private static List<String> remarks(Reading before, Reading now) {
        List<String> remarks = new ArrayList<>();
        now.layers().fading().forEach(name -> remarks.add("Fading: " + name + " held then and does not now"));
        if (!before.screen().measuredBy().equals(now.screen().measuredBy())) {
            remarks.add("Another coach measured: the change may be the coach's");
        }
        remarks.add(
                "In 1 of 20 people who did not change at all one test looks changed; two in the same direction are worth more than one large one");
        return remarks;
    }
}
