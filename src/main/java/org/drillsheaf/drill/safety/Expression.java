package org.drillsheaf.drill.safety;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillsheaf.saying.Saying;

/** The condition under which a rule takes hold, read three-valued. */
public sealed interface Expression {

    /** Whether it holds for these facts under these settings. */
    Truth evaluate(Facts facts, SettingValues settings);

    /** What makes it hold, or leaves it open, in words with numbers; empty when it surely does not hold. */
    default List<Saying> explain(Facts facts, SettingValues settings) {
        return List.of();
    }

    /** The names of drills, families, kinds and so on that it asks for. */
    default Stream<String> labels() {
        return Stream.empty();
    }

    /** The settings that it asks for. */
    default Set<String> settings() {
        return Set.of();
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

        @Override
        public List<Saying> explain(Facts facts, SettingValues settings) {
            return switch (facts.truth(measure)) {
                case YES -> List.of(measure.words());
                case UNKNOWN -> List.of(Saying.phrase("safety-rule.unknown").with("measure", measure.words()));
                case NO -> List.of();
            };
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

        @Override
        public Set<String> settings() {
            return Set.of(name);
        }
    }

    /** A setting compared with one of its words. */
    record Choice(String name, String word) implements Expression {
        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            return settings.isWord(name, word);
        }

        @Override
        public Set<String> settings() {
            return Set.of(name);
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

        @Override
        public Set<String> settings() {
            Set<String> both = new TreeSet<>();
            for (Operand side : List.of(left, right)) {
                if (side instanceof Configured configured) {
                    both.add(configured.name());
                }
            }
            return both;
        }

        @Override
        public List<Saying> explain(Facts facts, SettingValues settings) {
            if (!evaluate(facts, settings).mayBe() || !(left instanceof Measured measured)) {
                return List.of();
            }
            OptionalDouble value = left.value(facts, settings);
            OptionalDouble bound = right.value(facts, settings);
            return List.of(Saying.phrase("safety-rule.measured")
                    .with("measure", measured.measure().words())
                    .with("is", whole(value))
                    .with("sign", Saying.written(operator.sign()))
                    .with("than", whole(bound)));
        }

        private static Saying whole(OptionalDouble value) {
            return value.isPresent()
                    ? Saying.amount(StrictMath.rint(value.getAsDouble()), "")
                    : Saying.phrase("safety-rule.not-known");
        }
    }

    /** Two expressions joined by a word. */
    record Joined(Expression left, Word word, Expression right) implements Expression {
        /** How two expressions are joined. */
        enum Word {
            /** Both hold. */
            AND,
            /** One of them holds, or both. */
            OR
        }

        @Override
        public Truth evaluate(Facts facts, SettingValues settings) {
            Truth first = left.evaluate(facts, settings);
            Truth second = right.evaluate(facts, settings);
            return word == Word.AND ? first.and(second) : first.or(second);
        }

        @Override
        public Stream<String> labels() {
            return Stream.concat(left.labels(), right.labels());
        }

        @Override
        public Set<String> settings() {
            Set<String> both = new TreeSet<>(left.settings());
            both.addAll(right.settings());
            return both;
        }

        @Override
        public List<Saying> explain(Facts facts, SettingValues settings) {
            return !evaluate(facts, settings).mayBe()
                    ? List.of()
                    : Stream.concat(left.explain(facts, settings).stream(), right.explain(facts, settings).stream())
                            .toList();
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

        @Override
        public Set<String> settings() {
            return inner.settings();
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
