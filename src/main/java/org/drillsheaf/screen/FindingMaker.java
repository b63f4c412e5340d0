package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillsheaf.Side;
import org.drillsheaf.screen.rule.Truth;

/** Turns the value of one test and side into a finding. */
record FindingMaker(Scale scale, Optional<String> barred) {

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
                    "",
                    barred.map(b -> "not taken: " + b).orElse(""));
        }
        Measurement taken = measurement.get();
        String values = values(taken);
        if (barred.isPresent()) {
            String reason = "does not count, the test is barred: " + barred.get();
            return finding(side, measurement, FindingKind.NOT_TESTED, Truth.UNKNOWN, Truth.UNKNOWN, values, reason);
        }
        if (taken.painful()) {
            String reason = "kept and shown, counts as not known";
            return finding(side, measurement, FindingKind.PAINFUL, Truth.UNKNOWN, Truth.UNKNOWN, values, reason);
        }
        if (!scale.hasReference() || test.norm() instanceof Norm.ReferenceOnly) {
            String reason = scale.hasReference() ? "no cut-off" : "no reference for this age";
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
            String values,
            String reason) {
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
    static String values(MovementTest test, Measurement taken) {
        if (test.norm() instanceof Norm.Pair pair) {
            return pair.parts().stream()
                    .filter(p -> taken.parts().containsKey(p.id()))
                    .map(p -> p.name() + " " + Shown.value(number(taken.parts(), p.id()), test.unit()))
                    .collect(Collectors.joining(", "));
        }
        String bound =
                switch (taken.bound()) {
                    case EXACT -> "";
                    case OR_MORE -> " and more";
                    case OR_LESS -> " and less";
                };
        return taken.value().map(v -> Shown.value(v, test.unit()) + bound).orElse("");
    }

    private static double number(Map<String, Double> parts, String id) {
        return java.util.Objects.requireNonNullElse(parts.get(id), 0.0);
    }

    private String values(Measurement taken) {
        String values = values(scale.test(), taken);
        String marks = scale.test().marks().stream()
                .filter(m -> taken.mark(m).isPresent())
                .map(m -> (taken.mark(m).orElse(false) ? "" : "no ") + m)
                .collect(Collectors.joining(", "));
        return marks.isEmpty() ? values : values.isEmpty() ? marks : values + ", " + marks;
    }

    /** What the value is compared with, for this client. */
    String reason() {
        TreeSet<String> reasons = new TreeSet<>();
        scale.variants().forEach(v -> reasons.add(reason(v)));
        return String.join("; ", reasons);
    }

    private String reason(Scale.Variant variant) {
        MovementTest test = scale.test();
        String who =
                scale.variants().size() > 1 && differsBySex() ? variant.sex().id() + ": " : "";
        String error = variant.line() == 0
                ? ""
                : ", error "
                        + Shown.value(
                                test.step()
                                        .multiply(BigDecimal.valueOf(variant.line()))
                                        .doubleValue(),
                                test.unit());
        String own = variant.error().map(MeasurementError::ofThisClinic).orElse(false) ? " of this clinic" : "";
        Norm norm = test.norm();
        String against = "";
        if (norm instanceof Norm.Threshold threshold) {
            String direction = threshold.higherIsFuller() ? " or more" : " or less";
            against = scale.mark(threshold.cutoffs(), variant)
                    .map(m -> "passes at " + Shown.value(m.value(), test.unit()) + direction)
                    .orElse("no cut-off");
        } else if (norm instanceof Norm.Range range) {
            against = "expected "
                    + scale.mark(range.low(), variant)
                            .map(m -> Shown.number(m.value()))
                            .orElse("") + " to "
                    + scale.mark(range.high(), variant)
                            .map(m -> Shown.value(m.value(), test.unit()))
                            .orElse("");
        } else if (norm instanceof Norm.Pair pair) {
            against = pair.word() + " from "
                    + pair.parts().stream()
                            .map(p -> p.name() + " " + Shown.value(p.mark(), test.unit()))
                            .collect(Collectors.joining(" and "));
        } else if (norm instanceof Norm.Count count) {
            against = scale.mark(count.cutoffs(), variant)
                    .map(m -> count.word() + " from " + Shown.value(m.value(), test.unit()))
                    .orElse("");
        }
        return who + against + error + own;
    }

    private boolean differsBySex() {
        return scale.test().norm() instanceof Norm.Threshold threshold
                && (threshold.cutoffs().stream().anyMatch(m -> m.sex().isPresent())
                        || scale.test().errors().stream().anyMatch(e -> e.sex().isPresent()));
    }
}
