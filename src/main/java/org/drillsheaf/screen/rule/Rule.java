package org.drillsheaf.screen.rule;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;

/**
 * A statement that is true, false or unknown for some facts. Rules are written once for a side called {@code this} and read
 * for left and right.
 */
public sealed interface Rule {

    /** All hold. */
    record All(List<Rule> rules) implements Rule {
        public All {
            rules = List.copyOf(rules);
        }
    }

    /** One at least holds. */
    record Any(List<Rule> rules) implements Rule {
        public Any {
            rules = List.copyOf(rules);
        }
    }

    record Not(Rule rule) implements Rule {}

    /** So many at least, and so many at most when given, hold. */
    record Count(int atLeast, OptionalInt atMost, List<Rule> rules) implements Rule {
        public Count {
            rules = List.copyOf(rules);
        }
    }

    /** Holds for both sides, or for one of them, with {@code this} set in turn. */
    record ForSides(boolean both, Rule rule) implements Rule {}

    /** A rule with words of its own. */
    record Named(LocalText words, Rule rule) implements Rule {}

    /** A statement that the facts answer. */
    record Atom(Word word, String subject, Optional<String> part, Place place, Comparison comparison, int line)
            implements Rule {}

    Rule TRUE = new All(List.of());
    Rule FALSE = new Any(List.of());

    /** What an atom says. */
    enum Word {
        LIMITED,
        FREE,
        BEYOND,
        WIDE,
        NARROW,
        PAINFUL,
        BARRED,
        LESS,
        DIFFER,
        /** A yes-or-no mark; unknown with pain. */
        MARKED,
        /** A yes-or-no mark as written, with pain too. */
        NOTED,
        VALUE,
        /** A number as written: with pain too, and without its error. */
        WRITTEN,
        GAINED,
        LOST,
        AGE,
        OBSERVED,
        HOLDS,
        OPEN,
        NEW_PAIN
    }

    /** Which side of the test an atom speaks of. */
    enum Place {
        NONE,
        LEFT,
        RIGHT,
        BOTH,
        EITHER,
        THIS,
        OTHER,
        /** The side expected to come back first. */
        FIRST,
        /** The side expected to come back later. */
        LAST
    }

    /**
     * A number to compare with, in the unit of the test.
     *
     * @param sign {@code <=}, {@code >=} or empty for none
     */
    record Comparison(String sign, double number) {
        public static final Comparison NONE = new Comparison("", 0);

        public boolean isGiven() {
            return !sign.isEmpty();
        }
    }

    /** Truth of this rule. */
    default Truth truth(Facts facts, Optional<Side> thisSide) {
        return Evaluation.truth(this, facts, thisSide);
    }
}
