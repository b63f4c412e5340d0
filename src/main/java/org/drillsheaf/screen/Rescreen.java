package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;
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
        Saying remark = Saying.NOTHING;
        if (newPain) {
            remark = Saying.phrase("change.new-pain");
        } else if (kind == TestChange.Kind.BETTER
                && lax
                && presentations.notProgressWhenLax().contains(test.id())) {
            kind = TestChange.Kind.NO_REAL_CHANGE;
            remark = Saying.phrase("change.lax-further");
        } else if (kind == TestChange.Kind.WORSE
                && lax
                && presentations.notProgressWhenLax().contains(test.id())) {
            kind = TestChange.Kind.NO_REAL_CHANGE;
            remark = Saying.phrase("change.lax-less");
        } else if (kind == TestChange.Kind.BETTER && fresh.beyond().isTrue()) {
            kind = TestChange.Kind.NO_REAL_CHANGE;
            remark = Saying.phrase("change.beyond");
        }
        Saying before = shown(test, old, part);
        Saying now = shown(test, fresh, part);
        Saying smallest = smallestChange(scale);
        Saying difference = difference(test, old, fresh, part);
        Saying words = Saying.phrase("change.of")
                .with("test", Phrases.named(test.saidName(), side, part))
                .with("before", before.isEmpty() ? FindingKind.NOT_TESTED.words() : before)
                .with("now", now.isEmpty() ? FindingKind.NOT_TESTED.words() : now)
                .with("change", kind.words());
        Saying counted = difference.isEmpty()
                ? Saying.NOTHING
                : Saying.phrase("change.counts").with("difference", difference).with("smallest", smallest);
        words = Saying.joined(Joint.SEMICOLON, Phrases.withValues(words, counted), remark);
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

    private static Saying shown(MovementTest test, Finding finding, Optional<String> part) {
        boolean painful = finding.kind() == FindingKind.PAINFUL;
        Saying value = part.isEmpty()
                ? finding.values()
                : finding.measurement()
                        .flatMap(m -> Optional.ofNullable(m.parts().get(part.get())))
                        .<Saying>map(v -> test.unit().amount(v))
                        .orElse(Saying.NOTHING);
        if (!painful) {
            return value;
        }
        if (value.isEmpty()) {
            return part.isEmpty() ? FindingKind.PAINFUL.words() : Saying.NOTHING;
        }
        return Saying.phrase("value.painful").with("value", value);
    }

    private static Saying difference(MovementTest test, Finding old, Finding fresh, Optional<String> part) {
        Optional<Double> then = value(old, part);
        Optional<Double> now = value(fresh, part);
        return then.isPresent() && now.isPresent()
                ? new Saying.Amount(
                        BigDecimal.valueOf(now.get())
                                .subtract(BigDecimal.valueOf(then.get()))
                                .doubleValue(),
                        test.unit().id(),
                        true)
                : Saying.NOTHING;
    }

    private static Optional<Double> value(Finding finding, Optional<String> part) {
        return finding.measurement()
                .flatMap(m -> part.isPresent() ? Optional.ofNullable(m.parts().get(part.get())) : m.value());
    }

    private static Saying smallestChange(Scale scale) {
        MovementTest test = scale.test();
        long most =
                scale.variants().stream().mapToLong(Scale.Variant::change).max().orElse(0);
        return most == 0
                ? Saying.phrase("change.no-number")
                : test.unit()
                        .amount(test.step().multiply(BigDecimal.valueOf(most)).doubleValue());
    }

    /** Which side came back first, in the tests that are expected to show it. */
    private List<Saying> sideOrder(Reading before, Reading now, List<TestChange> changes) {
        List<Saying> sentences = new ArrayList<>();
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

    private static Optional<Saying> sentence(TestChange early, TestChange late, Side first, Reading before) {
        Optional<String> key = Optional.empty();
        if (early.kind() == TestChange.Kind.WORSE) {
            key = Optional.of("less");
        } else if (early.gained()) {
            key = Optional.of(late.gained() ? "both" : "expected");
        } else if (late.gained() && before.layers().underneath().isPresent()) {
            key = Optional.of("unusual");
        }
        return key.map(k -> Saying.phrase("side-order." + k)
                .with("test", early.test().saidName())
                .with("side", Phrases.side(first))
                .with("other", Phrases.side(first.opposite())));
    }

    /** One side forward after a reading of both sides: the layer underneath, or something to measure again. */
    private static Optional<Saying> oneSideForward(Reading before, Reading now) {
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
        return Optional.of(Saying.phrase(asExpected ? "side-order.underneath-shows" : "side-order.not-underneath")
                .with("side", Phrases.side(side.get())));
    }

    private static List<Saying> remarks(Reading before, Reading now) {
        List<Saying> remarks = new ArrayList<>();
        now.layers()
                .fading()
                .forEach(name -> remarks.add(Saying.phrase("remark.fading").with("name", name)));
        if (!before.screen().measuredBy().equals(now.screen().measuredBy())) {
            remarks.add(Saying.phrase("remark.coach-changed"));
        }
        remarks.add(Saying.phrase("remark.chance"));
        return remarks;
    }
}
