package org.drillsheaf.screen;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.screen.rule.Folding;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.Truth;

/**
 * In what share of all completions of the unknown findings a rule comes out true. Every completion counts alike. Not safe for
 * several threads.
 */
final class Chances {
    private final Outcomes outcomes;
    private final Map<Rule, Double> known = new HashMap<>();

    Chances(Outcomes outcomes) {
        this.outcomes = outcomes;
    }

    /** @param residual a plain rule into which everything known is worked */
    double of(Rule residual) {
        if (residual.equals(Rule.TRUE)) {
            return 1;
        } else if (residual.equals(Rule.FALSE)) {
            return 0;
        }
        Double before = known.get(residual);
        if (before != null) {
            return before;
        }
        Rule.Atom atom = Folding.atoms(residual).iterator().next();
        List<Outcomes.Outcome> ways = outcomes.of(atom.subject(), f -> true);
        boolean ofTest =
                ways.stream().anyMatch(w -> w.truth(atom, Folding.side(atom)).isPresent());
        double chance = ofTest
                ? ways.stream()
                                .mapToDouble(way -> of(after(residual, way, atom.subject())))
                                .sum()
                        / ways.size()
                : (of(assume(residual, atom, Truth.TRUE)) + of(assume(residual, atom, Truth.FALSE))) / 2;
        known.put(residual, chance);
        return chance;
    }

    /** What is left of a rule when one test comes out in this way. */
    static Rule after(Rule residual, Outcomes.Outcome way, String testId) {
        return Folding.fold(
                residual,
                atom -> atom.subject().equals(testId) ? way.truth(atom, Folding.side(atom)) : Optional.empty());
    }

    private static Rule assume(Rule residual, Rule.Atom atom, Truth truth) {
        return Folding.fold(residual, a -> a.equals(atom) ? Optional.of(truth) : Optional.empty());
    }
}
