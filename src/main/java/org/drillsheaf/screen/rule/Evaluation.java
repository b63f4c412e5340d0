package org.drillsheaf.screen.rule;

import java.util.Optional;
import org.drillsheaf.Side;

/** Works out the truth of a rule. */
final class Evaluation {
    private Evaluation() {}

    static Truth truth(Rule rule, Facts facts, Optional<Side> thisSide) {
        if (rule instanceof Rule.Atom atom) {
            return atom(atom, facts, thisSide);
        } else if (rule instanceof Rule.All all) {
            return all.rules().stream().collect(Truth.all(r -> truth(r, facts, thisSide)));
        } else if (rule instanceof Rule.Any any) {
            return any.rules().stream().collect(Truth.any(r -> truth(r, facts, thisSide)));
        } else if (rule instanceof Rule.Not not) {
            return truth(not.rule(), facts, thisSide).not();
        } else if (rule instanceof Rule.Named named) {
            return truth(named.rule(), facts, thisSide);
        } else if (rule instanceof Rule.Count count) {
            var truths =
                    count.rules().stream().map(r -> truth(r, facts, thisSide)).toList();
            Truth enough = Truth.atLeast(count.atLeast(), truths);
            return count.atMost().isEmpty()
                    ? enough
                    : enough.and(
                            Truth.atLeast(count.atMost().getAsInt() + 1, truths).not());
        } else if (rule instanceof Rule.ForSides sides) {
            Truth left = truth(sides.rule(), facts, Optional.of(Side.LEFT));
            Truth right = truth(sides.rule(), facts, Optional.of(Side.RIGHT));
            return sides.both() ? left.and(right) : left.or(right);
        }
        throw new IllegalStateException("unknown rule " + rule);
    }

    private static Truth atom(Rule.Atom atom, Facts facts, Optional<Side> thisSide) {
        return switch (atom.place()) {
            case NONE -> facts.truth(atom, Optional.empty());
            case LEFT -> facts.truth(atom, Optional.of(Side.LEFT));
            case RIGHT -> facts.truth(atom, Optional.of(Side.RIGHT));
            case BOTH -> facts.truth(atom, Optional.of(Side.LEFT)).and(facts.truth(atom, Optional.of(Side.RIGHT)));
            case EITHER -> facts.truth(atom, Optional.of(Side.LEFT)).or(facts.truth(atom, Optional.of(Side.RIGHT)));
            case THIS -> facts.truth(atom, Optional.of(side(thisSide)));
            case OTHER -> facts.truth(atom, Optional.of(side(thisSide).opposite()));
            case FIRST -> facts.truth(atom, Optional.of(facts.expectedFirst()));
            case LAST -> facts.truth(atom, Optional.of(facts.expectedFirst().opposite()));
        };
    }

    private static Side side(Optional<Side> thisSide) {
        return thisSide.orElseThrow(
                () -> new IllegalStateException("a rule about “this” side was read without a side"));
    }
}
