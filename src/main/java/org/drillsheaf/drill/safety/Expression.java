package org.drillsheaf.drill.safety;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The condition under which a rule takes hold, read three-valued. */
public sealed interface Expression {

    /** Whether it holds for these facts under these settings. */
    Truth evaluate(Facts facts, SettingValues settings);

    /** The names of drills, families, kinds and so on that it asks for. */
    default Stream<String> labels() {
        return Stream.empty();
    }

    /** Holds for every drill. */
    record Always() implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return Truth.YES;
        }
    }

    /** A yes-or-no measure. */
    record Flag(Measure measure) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return facts.truth(measure);
        }
    }

    /** One of the drill's names, for example {@code family:hip-lift}. */
    record Label(String label) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return Truth.of(facts.labels().contains(label));
        }

        @Override
        public Stream<String> labels() {
            return Stream.of(label);
        }
    }

    /** A yes-or-no setting. */
    record Setting(String name) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return settings.truth(name);
        }
    }

    /** A setting compared with one of its words. */
    record Choice(String name, String word) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return settings.isWord(name, word);
        }
    }

    /** Two numbers compared. */
    record Compare(Operand left, Operator operator, Operand right) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            OptionalDouble a = left.value(facts, settings);
            OptionalDouble b = right.value(facts, settings);
            if (a.isEmpty() || b.isEmpty()) {
                return Truth.UNKNOWN;
            }
            return Truth.of(operator.holds(a.getAsDouble(), b.getAsDouble()));
        }
    }

    /** Both hold. */
    record And(Expression left, Expression right) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return left.evaluate(facts, settings).and(right.evaluate(facts, settings));
        }

        @Override
        public Stream<String> labels() {
            return Stream.concat(left.labels(), right.labels());
        }
    }

    /** One of them holds, or both. */
    record Or(Expression left, Expression right) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return left.evaluate(facts, settings).or(right.evaluate(facts, settings));
        }

        @Override
        public Stream<String> labels() {
            return Stream.concat(left.labels(), right.labels());
        }
    }

    /** It does not hold. */
    record Not(Expression inner) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return inner.evaluate(facts, settings).not();
        }

        @Override
        public Stream<String> labels() {
            return inner.labels();
        }
    }

    /** How two numbers are compared. Solved angles carry rounding, so a difference under a thousandth counts as none. */
    enum Operator {
        ABOVE(">"),
        AT_LEAST(">="),
        BELOW("<"),
        AT_MOST("<="),
        EQUAL("=");

        private static final double NOTHING = 0.001;
        private final String sign;

        Operator(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }

        boolean holds(double a, double b) {
            return switch (this) {
                case ABOVE -> a > b + NOTHING;
                case AT_LEAST -> a >= b - NOTHING;
                case BELOW -> a < b - NOTHING;
                case AT_MOST -> a <= b + NOTHING;
                case EQUAL -> StrictMath.abs(a - b) <= NOTHING;
            };
        }
    }

    /** One side of a comparison. */
    sealed interface Operand {
        OptionalDouble value(Facts facts, SettingValues settings);
    }

    /** A number written in the rule. */
    record Number(double value) implements Operand {
        @Override
        public OptionalDouble value(Facts facts, SettingValues settings) {
            return OptionalDouble.of(value);
        }

        @Override
        public String toString() {
            return value == StrictMath.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
        }
    }

    /** A measure of the drill. */
    record Measured(Measure measure) implements Operand {
        @Override
        public OptionalDouble value(Facts facts, SettingValues settings) {
            return facts.number(measure);
        }
    }

    /** A setting of the condition, or {@code weeks} since it began. */
    record Configured(String name) implements Operand {
        @Override
        public OptionalDouble value(Facts facts, SettingValues settings) {
            return settings.number(name);
        }
    }
}
