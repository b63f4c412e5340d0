package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;
import org.drillsheaf.screen.rule.Truth;

/** Turns the value of one test and side into a finding. */
record FindingMaker(Scale scale, Optional<Saying> barred) {

    Finding finding(Optional<Side> side, Optional<Measurement> measurement) {
        MovementTest test = scale.test();
        if (measurement.isEmpty()) {
            return new Finding(
                    test,
                    side,
                    FindingKind.NOT_TESTED,
                    Optional.empty(),
                    Truth.UNKNOWN,
                    Truth.UNKNOWN,
                    Optional.empty(),
                    Saying.NOTHING,
                    barred.<Saying>map(b -> Saying.phrase("finding.not-taken").with("because", b))
                            .orElse(Saying.NOTHING));
        }
        Measurement taken = measurement.get();
        Saying values = values(taken);
        if (barred.isPresent()) {
            Saying reason = Saying.phrase("finding.barred").with("because", barred.get());
            return finding(side, measurement, FindingKind.NOT_TESTED, Truth.UNKNOWN, Truth.UNKNOWN, values, reason);
        }
        if (taken.painful()) {
            Saying reason = Saying.phrase("finding.kept");
            return finding(side, measurement, FindingKind.PAINFUL, Truth.UNKNOWN, Truth.UNKNOWN, values, reason);
        }
        if (!scale.hasReference() || test.norm() instanceof Norm.ReferenceOnly) {
            Saying reason = Saying.phrase(scale.hasReference() ? "norm.none" : "finding.no-reference-for-age");
            return finding(side, measurement, FindingKind.NO_REFERENCE, Truth.UNKNOWN, Truth.UNKNOWN, values, reason);
        }
        Truth limited = limited(taken);
        Truth beyond = beyond(taken);
        return finding(side, measurement, kind(limited, beyond), limited, beyond, values, reason());
    }

    private Finding finding(
            Optional<Side> side,
            Optional<Measurement> measurement,
            FindingKind kind,
            Truth limited,
            Truth beyond,
            Saying values,
            Saying reason) {
        Optional<String> word = measurement.flatMap(m -> word(m, limited, beyond));
        return new Finding(scale.test(), side, kind, word, limited, beyond, measurement, values, reason);
    }

    private FindingKind kind(Truth limited, Truth beyond) {
        if (scale.test().norm() instanceof Norm.Count) {
            return beyond.isTrue()
                    ? FindingKind.BEYOND_EXPECTED
                    : beyond.isUnknown() ? FindingKind.AT_THE_LINE : FindingKind.FULL;
        }
        return switch (limited) {
            case TRUE -> FindingKind.LIMITED;
            case UNKNOWN -> FindingKind.AT_THE_LINE;
            case FALSE -> beyond.isTrue() ? FindingKind.BEYOND_EXPECTED : FindingKind.FULL;
        };
    }

    private Truth limited(Measurement taken) {
        Norm norm = scale.test().norm();
        if (norm instanceof Norm.Threshold threshold) {
            Span span = scale.span(Optional.of(taken), Optional.empty());
            return scale.agreed(v -> scale.mark(threshold.cutoffs(), v)
                    .map(mark ->
                            span.passes(scale.fuller(mark.value()), v.line()).not())
                    .orElse(Truth.UNKNOWN));
        } else if (norm instanceof Norm.Range) {
            return isNarrow(scale, taken).or(isWide(scale, taken));
        } else if (norm instanceof Norm.Pair pair) {
            return reaches(taken, pair.first()).and(reaches(taken, pair.second()));
        } else if (norm instanceof Norm.Count) {
            return Truth.FALSE;
        }
        return Truth.UNKNOWN;
    }

    private Truth reaches(Measurement taken, Norm.Pair.Part part) {
        Span span = scale.span(Optional.of(taken), Optional.of(part.id()));
        return scale.compares(span, true, part.mark());
    }

    /** Whether the value lies above the expected range by the line. */
    static Truth isWide(Scale scale, Measurement taken) {
        Norm.Range range = (Norm.Range) scale.test().norm();
        return outside(scale, taken, range.high(), true);
    }

    static Truth isNarrow(Scale scale, Measurement taken) {
        Norm.Range range = (Norm.Range) scale.test().norm();
        return outside(scale, taken, range.low(), false);
    }

    private static Truth outside(Scale scale, Measurement taken, List<Norm.Mark> marks, boolean above) {
        if (!scale.hasReference()) {
            return Truth.UNKNOWN;
        }
        Span span = scale.span(Optional.of(taken), Optional.empty());
        return scale.agreed(v -> scale.mark(marks, v)
                .map(mark -> scale.compares(span, above, mark.value()))
                .orElse(Truth.UNKNOWN));
    }

    private Truth beyond(Measurement taken) {
        Norm norm = scale.test().norm();
        if (norm instanceof Norm.Threshold threshold) {
            Span span = scale.span(Optional.of(taken), Optional.empty());
            return scale.agreed(v -> scale.mark(threshold.beyond(), v)
                    .map(mark -> span.passes(scale.fuller(mark.value()), v.line()))
                    .orElse(Truth.FALSE));
        } else if (norm instanceof Norm.Count count) {
            return reachesCount(taken, count);
        }
        return Truth.FALSE;
    }

    /** At the cut-off, or one point below with enough yes to the questions. One point below alone says nothing. */
    private Truth reachesCount(Measurement taken, Norm.Count count) {
        long counted =
                count.items().stream().filter(i -> taken.mark(i).orElse(false)).count();
        long notLooked =
                count.items().stream().filter(i -> taken.mark(i).isEmpty()).count();
        long low = taken.value().map(Double::longValue).orElse(counted);
        long high = taken.value().map(Double::longValue).orElse(counted + notLooked);
        long yes = count.questions().stream()
                .filter(q -> taken.mark(q).orElse(false))
                .count();
        return scale.agreed(v -> {
            Optional<Norm.Mark> mark = scale.mark(count.cutoffs(), v);
            if (mark.isEmpty()) {
                return Truth.UNKNOWN;
            }
            long cutoff = (long) mark.get().value();
            if (low >= cutoff || (low == cutoff - 1 && yes >= count.questionsNeeded())) {
                return Truth.TRUE;
            }
            return high < cutoff - 1 ? Truth.FALSE : Truth.UNKNOWN;
        });
    }

    private Optional<String> word(Measurement taken, Truth limited, Truth beyond) {
        Norm norm = scale.test().norm();
        if (norm instanceof Norm.Range range && limited.isTrue()) {
            return Optional.of(isWide(scale, taken).isTrue() ? range.highWord() : range.lowWord());
        } else if (norm instanceof Norm.Pair pair && limited.isTrue()) {
            return Optional.of(pair.word());
        } else if (norm instanceof Norm.Count count && beyond.isTrue()) {
            return Optional.of(count.word());
        }
        return Optional.empty();
    }

    /** The value as a coach reads it. */
    static Saying values(MovementTest test, Measurement taken) {
        if (test.norm() instanceof Norm.Pair pair) {
            return Saying.joined(
                    Joint.COMMA,
                    pair.parts().stream()
                            .filter(p -> taken.parts().containsKey(p.id()))
                            .map(p -> part(p, test.unit().amount(number(taken.parts(), p.id()))))
                            .toList());
        }
        return taken.value()
                .<Saying>map(v -> switch (taken.bound()) {
                    case EXACT -> test.unit().amount(v);
                    case OR_MORE ->
                        Saying.phrase("value.and-more")
                                .with("value", test.unit().amount(v));
                    case OR_LESS ->
                        Saying.phrase("value.and-less")
                                .with("value", test.unit().amount(v));
                })
                .orElse(Saying.NOTHING);
    }

    private static Saying part(Norm.Pair.Part part, Saying value) {
        return Saying.phrase("value.part").with("part", part.saidName()).with("value", value);
    }

    private static double number(Map<String, Double> parts, String id) {
        return java.util.Objects.requireNonNullElse(parts.get(id), 0.0);
    }

    private Saying values(Measurement taken) {
        List<Saying> values = new ArrayList<>(List.of(values(scale.test(), taken)));
        for (String mark : scale.test().marks()) {
            Saying name = Saying.name(Saying.Name.Kind.MARK, mark);
            taken.mark(mark)
                    .ifPresent(yes ->
                            values.add(yes ? name : Saying.phrase("value.no").with("mark", name)));
        }
        return Saying.joined(Joint.COMMA, values);
    }

    /** What the value is compared with, for this client. */
    Saying reason() {
        return Saying.joined(
                Joint.SEMICOLON,
                scale.variants().stream().map(this::reason).distinct().toList());
    }

    private Saying reason(Scale.Variant variant) {
        MovementTest test = scale.test();
        Saying error = variant.line() == 0
                ? Saying.NOTHING
                : Saying.phrase(
                                variant.error()
                                                .map(MeasurementError::ofThisClinic)
                                                .orElse(false)
                                        ? "norm.own-error"
                                        : "norm.error")
                        .with(
                                "error",
                                test.unit()
                                        .amount(test.step()
                                                .multiply(BigDecimal.valueOf(variant.line()))
                                                .doubleValue()));
        Saying told = Saying.joined(Joint.COMMA, against(variant), error);
        return scale.variants().size() > 1 && differsBySex()
                ? Saying.phrase("norm." + variant.sex().id()).with("norm", told)
                : told;
    }

    private Saying against(Scale.Variant variant) {
        MovementTest test = scale.test();
        Norm norm = test.norm();
        if (norm instanceof Norm.Threshold threshold) {
            return scale.mark(threshold.cutoffs(), variant)
                    .<Saying>map(m -> Saying.phrase(threshold.higherIsFuller() ? "norm.or-more" : "norm.or-less")
                            .with("mark", test.unit().amount(m.value())))
                    .orElse(Saying.phrase("norm.none"));
        } else if (norm instanceof Norm.Range range) {
            return Saying.phrase("norm.range")
                    .with("low", mark(range.low(), variant, ""))
                    .with("high", mark(range.high(), variant, test.unit().id()));
        } else if (norm instanceof Norm.Pair pair) {
            return Saying.phrase("norm.from")
                    .with("word", Saying.name(Saying.Name.Kind.WORD, pair.word()))
                    .with(
                            "mark",
                            Saying.joined(
                                    Joint.AND,
                                    pair.parts().stream()
                                            .map(p -> part(p, test.unit().amount(p.mark())))
                                            .toList()));
        } else if (norm instanceof Norm.Count count) {
            return scale.mark(count.cutoffs(), variant)
                    .<Saying>map(m -> Saying.phrase("norm.from")
                            .with("word", Saying.name(Saying.Name.Kind.WORD, count.word()))
                            .with("mark", test.unit().amount(m.value())))
                    .orElse(Saying.NOTHING);
        }
        return Saying.NOTHING;
    }

    private Saying mark(List<Norm.Mark> marks, Scale.Variant variant, String unit) {
        return scale.mark(marks, variant)
                .<Saying>map(m -> Saying.amount(m.value(), unit))
                .orElse(Saying.NOTHING);
    }

    private boolean differsBySex() {
        return scale.test().norm() instanceof Norm.Threshold threshold
                && (threshold.cutoffs().stream().anyMatch(m -> m.sex().isPresent())
                        || scale.test().errors().stream().anyMatch(e -> e.sex().isPresent()));
    }
}
