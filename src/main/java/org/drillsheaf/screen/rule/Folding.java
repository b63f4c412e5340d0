package org.drillsheaf.screen.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.drillsheaf.Side;

/**
 * Writes a rule in a plain form (no {@code this}, no words, every statement about one side) and works into it what is already
 * known, so that what is left is exactly what is still unknown. Two rules that ask the same come out equal.
 */
public final class Folding {
    private Folding() {}

    /** The plain form of a rule for one side, or for none. */
    public static Rule plain(Rule rule, Optional<Side> thisSide, Side expectedFirst) {
        if (rule instanceof Rule.Atom atom) {
            return switch (atom.place()) {
                case NONE -> at(atom, Rule.Place.NONE);
                case LEFT, RIGHT -> at(atom, atom.place());
                case BOTH -> new Rule.All(List.of(at(atom, Rule.Place.LEFT), at(atom, Rule.Place.RIGHT)));
                case EITHER -> new Rule.Any(List.of(at(atom, Rule.Place.LEFT), at(atom, Rule.Place.RIGHT)));
                case THIS -> at(atom, place(thisSide.orElseThrow()));
                case OTHER -> at(atom, place(thisSide.orElseThrow().opposite()));
                case FIRST -> at(atom, place(expectedFirst));
                case LAST -> at(atom, place(expectedFirst.opposite()));
            };
        } else if (rule instanceof Rule.All all) {
            return new Rule.All(plain(all.rules(), thisSide, expectedFirst));
        } else if (rule instanceof Rule.Any any) {
            return new Rule.Any(plain(any.rules(), thisSide, expectedFirst));
        } else if (rule instanceof Rule.Not not) {
            return new Rule.Not(plain(not.rule(), thisSide, expectedFirst));
        } else if (rule instanceof Rule.Named named) {
            return plain(named.rule(), thisSide, expectedFirst);
        } else if (rule instanceof Rule.Count count) {
            return new Rule.Count(count.atLeast(), count.atMost(), plain(count.rules(), thisSide, expectedFirst));
        } else if (rule instanceof Rule.ForSides sides) {
            List<Rule> both = List.of(
                    plain(sides.rule(), Optional.of(Side.LEFT), expectedFirst),
                    plain(sides.rule(), Optional.of(Side.RIGHT), expectedFirst));
            return sides.both() ? new Rule.All(both) : new Rule.Any(both);
        }
        throw new IllegalStateException("unknown rule " + rule);
    }

    private static List<Rule> plain(List<Rule> rules, Optional<Side> thisSide, Side expectedFirst) {
        return rules.stream().map(r -> plain(r, thisSide, expectedFirst)).toList();
    }

    private static Rule.Place place(Side side) {
        return side == Side.LEFT ? Rule.Place.LEFT : Rule.Place.RIGHT;
    }

    private static Rule.Atom at(Rule.Atom atom, Rule.Place place) {
        return new Rule.Atom(atom.word(), atom.subject(), atom.part(), place, atom.comparison(), 0);
    }

    /** The side that a plain statement speaks of. */
    public static Optional<Side> side(Rule.Atom atom) {
        return switch (atom.place()) {
            case LEFT -> Optional.of(Side.LEFT);
            case RIGHT -> Optional.of(Side.RIGHT);
            default -> Optional.empty();
        };
    }

    /**
     * Works known statements into a plain rule.
     *
     * @param known truth of a statement; empty or unknown when it stays open
     */
    public static Rule fold(Rule rule, Function<Rule.Atom, Optional<Truth>> known) {
        if (rule instanceof Rule.Atom atom) {
            Truth truth = known.apply(atom).orElse(Truth.UNKNOWN);
            return truth.isUnknown() ? atom : truth.isTrue() ? Rule.TRUE : Rule.FALSE;
        } else if (rule instanceof Rule.Not not) {
            return negated(fold(not.rule(), known));
        } else if (rule instanceof Rule.All all) {
            return joined(all.rules(), known, true);
        } else if (rule instanceof Rule.Any any) {
            return joined(any.rules(), known, false);
        } else if (rule instanceof Rule.Count count) {
            return counted(count, known);
        }
        throw new IllegalStateException("not a plain rule: " + rule);
    }

    private static Rule negated(Rule rule) {
        if (rule.equals(Rule.TRUE)) {
            return Rule.FALSE;
        } else if (rule.equals(Rule.FALSE)) {
            return Rule.TRUE;
        }
        return rule instanceof Rule.Not not ? not.rule() : new Rule.Not(rule);
    }

    private static Rule joined(List<Rule> rules, Function<Rule.Atom, Optional<Truth>> known, boolean all) {
        Rule neutral = all ? Rule.TRUE : Rule.FALSE;
        Rule deciding = all ? Rule.FALSE : Rule.TRUE;
        Set<Rule> left = new LinkedHashSet<>();
        for (Rule rule : rules) {
            Rule folded = fold(rule, known);
            if (folded.equals(deciding)) {
                return deciding;
            }
            if (!folded.equals(neutral)) {
                left.add(folded);
            }
        }
        if (left.isEmpty()) {
            return neutral;
        }
        List<Rule> rest = List.copyOf(left);
        return rest.size() == 1 ? rest.get(0) : all ? new Rule.All(rest) : new Rule.Any(rest);
    }

    private static Rule counted(Rule.Count count, Function<Rule.Atom, Optional<Truth>> known) {
        int sure = 0;
        List<Rule> left = new ArrayList<>();
        for (Rule rule : count.rules()) {
            Rule folded = fold(rule, known);
            if (folded.equals(Rule.TRUE)) {
                sure++;
            } else if (!folded.equals(Rule.FALSE)) {
                left.add(folded);
            }
        }
        int least = Math.max(count.atLeast() - sure, 0);
        if (least > left.size()) {
            return Rule.FALSE;
        }
        if (count.atMost().isEmpty()) {
            return least == 0 ? Rule.TRUE : new Rule.Count(least, OptionalInt.empty(), left);
        }
        int most = count.atMost().getAsInt() - sure;
        if (most < 0) {
            return Rule.FALSE;
        }
        return least == 0 && most >= left.size() ? Rule.TRUE : new Rule.Count(least, OptionalInt.of(most), left);
    }

    /** Every statement in a plain rule, in order. */
    public static Set<Rule.Atom> atoms(Rule rule) {
        Set<Rule.Atom> atoms = new LinkedHashSet<>();
        collect(rule, atoms);
        return atoms;
    }

    private static void collect(Rule rule, Set<Rule.Atom> atoms) {
        if (rule instanceof Rule.Atom atom) {
            atoms.add(atom);
        } else if (rule instanceof Rule.Not not) {
            collect(not.rule(), atoms);
        } else if (rule instanceof Rule.All all) {
            all.rules().forEach(r -> collect(r, atoms));
        } else if (rule instanceof Rule.Any any) {
            any.rules().forEach(r -> collect(r, atoms));
        } else if (rule instanceof Rule.Count count) {
            count.rules().forEach(r -> collect(r, atoms));
        } else if (rule instanceof Rule.Named named) {
            collect(named.rule(), atoms);
        } else if (rule instanceof Rule.ForSides sides) {
            collect(sides.rule(), atoms);
        }
    }
}
