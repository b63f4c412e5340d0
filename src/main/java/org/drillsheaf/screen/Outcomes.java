package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.drillsheaf.Side;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.Truth;

/**
 * How one test could still come out. Both sides go together; what is already known stays as it is, and every way of completing
 * the rest counts alike.
 */
final class Outcomes {
    /** How one side could come out. NARROW and WIDE are the two ways in which a range is limited. */
    enum State {
        LIMITED,
        NARROW,
        WIDE,
        FULL,
        BEYOND;

        boolean isLimited() {
            return this == LIMITED || this == NARROW || this == WIDE;
        }
    }

    enum Relation {
        LEFT_LESS,
        RIGHT_LESS,
        ALIKE
    }

    /**
     * One way in which a test could come out. A place that is missing stays as it is.
     *
     * @param marks by place and name
     */
    record Outcome(
            Map<Optional<Side>, State> states,
            Optional<Relation> relation,
            Map<Optional<Side>, Map<String, Boolean>> marks) {

        /** Truth of a plain statement about this test; empty when the outcome does not say. */
        Optional<Truth> truth(Rule.Atom atom, Optional<Side> side) {
            State state = states.get(side);
            return switch (atom.word()) {
                case LIMITED -> of(state, state != null && state.isLimited());
                case FREE -> of(state, state != null && !state.isLimited());
                case BEYOND -> of(state, state == State.BEYOND);
                case WIDE -> of(state, state == State.WIDE);
                case NARROW -> of(state, state == State.NARROW);
                case LESS ->
                    relation.map(r -> Truth.of(
                            r == (side.equals(Optional.of(Side.LEFT)) ? Relation.LEFT_LESS : Relation.RIGHT_LESS)));
                case DIFFER -> relation.map(r -> Truth.of(r != Relation.ALIKE));
                case MARKED ->
                    Optional.ofNullable(marks.getOrDefault(side, Map.of())
                                    .get(atom.part().orElse("")))
                            .map(Truth::of);
                default -> Optional.empty();
            };
        }

        private static Optional<Truth> of(@org.jspecify.annotations.Nullable State state, boolean truth) {
            return state == null ? Optional.empty() : Optional.of(Truth.of(truth));
        }
    }

    private final ReadingFacts facts;
    private final Set<Rule.Atom> read;

    /** @param read the plain statements of the rule in question; only what it reads is completed */
    Outcomes(ReadingFacts facts, Set<Rule.Atom> read) {
        this.facts = facts;
        this.read = read;
    }

    /** All ways in which the test could come out, completing only the places that may be completed. */
    List<Outcome> of(String testId, Predicate<Finding> mayComplete) {
        Map<Optional<Side>, Finding> places = facts.findings().getOrDefault(testId, Map.of());
        List<Outcome> outcomes = List.of(new Outcome(Map.of(), Optional.empty(), Map.of()));
        for (Finding finding : places.values()) {
            if (mayComplete.test(finding) || !finding.isOpen()) {
                outcomes = withStates(outcomes, finding);
                outcomes = withMarks(outcomes, finding);
            }
        }
        boolean readsRelation = reads(testId, Rule.Word.LESS) || reads(testId, Rule.Word.DIFFER);
        boolean whole = places.values().stream()
                .allMatch(f -> mayComplete.test(f) || f.kind() == FindingKind.LIMITED || !f.isOpen());
        return readsRelation && whole ? withRelations(outcomes, testId) : outcomes;
    }

    private boolean reads(String testId, Rule.Word word) {
        return read.stream().anyMatch(a -> a.subject().equals(testId) && a.word() == word);
    }

    private List<Outcome> withStates(List<Outcome> outcomes, Finding finding) {
        List<Outcome> more = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            for (State state : states(finding)) {
                Map<Optional<Side>, State> states = new LinkedHashMap<>(outcome.states());
                states.put(finding.side(), state);
                more.add(new Outcome(states, outcome.relation(), outcome.marks()));
            }
        }
        return more;
    }

    private List<State> states(Finding finding) {
        List<State> states = new ArrayList<>();
        Norm norm = finding.test().norm();
        if (norm instanceof Norm.Range) {
            for (State state : List.of(State.NARROW, State.WIDE)) {
                Rule.Word word = state == State.WIDE ? Rule.Word.WIDE : Rule.Word.NARROW;
                Rule.Atom atom = new Rule.Atom(
                        word, finding.test().id(), Optional.empty(), Rule.Place.NONE, Rule.Comparison.NONE, 0);
                if (!facts.truth(atom, finding.side()).isFalse()) {
                    states.add(state);
                }
            }
        } else if (!(norm instanceof Norm.Count) && !finding.limited().isFalse()) {
            states.add(State.LIMITED);
        }
        if (!finding.limited().isTrue()) {
            if (!finding.beyond().isTrue()) {
                states.add(State.FULL);
            }
            if (!finding.beyond().isFalse() && hasUpperMark(norm)) {
                states.add(State.BEYOND);
            }
        }
        return states;
    }

    static boolean hasUpperMark(Norm norm) {
        return norm instanceof Norm.Count
                || (norm instanceof Norm.Threshold t && !t.beyond().isEmpty());
    }

    private List<Outcome> withMarks(List<Outcome> outcomes, Finding finding) {
        List<Outcome> result = outcomes;
        for (String mark : finding.test().marks()) {
            Optional<Rule.Atom> atom = read.stream()
                    .filter(a -> a.word() == Rule.Word.MARKED
                            && a.subject().equals(finding.test().id())
                            && a.part().equals(Optional.of(mark)))
                    .findFirst();
            if (atom.isPresent()) {
                Truth known = facts.truth(atom.get(), finding.side());
                List<Outcome> more = new ArrayList<>();
                for (Outcome outcome : result) {
                    for (boolean yes : List.of(true, false)) {
                        if (known.isUnknown() || known == Truth.of(yes)) {
                            Map<Optional<Side>, Map<String, Boolean>> marks = new LinkedHashMap<>(outcome.marks());
                            Map<String, Boolean> here =
                                    new LinkedHashMap<>(marks.getOrDefault(finding.side(), Map.of()));
                            here.put(mark, yes);
                            marks.put(finding.side(), here);
                            more.add(new Outcome(outcome.states(), outcome.relation(), marks));
                        }
                    }
                }
                result = more;
            }
        }
        return result;
    }

    private List<Outcome> withRelations(List<Outcome> outcomes, String testId) {
        Truth left = less(testId, Side.LEFT);
        Truth right = less(testId, Side.RIGHT);
        List<Outcome> more = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            State leftState = outcome.states().get(Optional.of(Side.LEFT));
            State rightState = outcome.states().get(Optional.of(Side.RIGHT));
            int order = leftState == null || rightState == null ? 0 : rank(leftState) - rank(rightState);
            for (Relation relation : Relation.values()) {
                boolean fits =
                        switch (relation) {
                            case LEFT_LESS -> !left.isFalse() && order <= 0;
                            case RIGHT_LESS -> !right.isFalse() && order >= 0;
                            case ALIKE -> !left.isTrue() && !right.isTrue();
                        };
                if (fits) {
                    more.add(new Outcome(outcome.states(), Optional.of(relation), outcome.marks()));
                }
            }
        }
        return more.isEmpty() ? outcomes : more;
    }

    private static int rank(State state) {
        return state.isLimited() ? 0 : state == State.FULL ? 1 : 2;
    }

    private Truth less(String testId, Side side) {
        Rule.Place place = side == Side.LEFT ? Rule.Place.LEFT : Rule.Place.RIGHT;
        return facts.truth(
                new Rule.Atom(Rule.Word.LESS, testId, Optional.empty(), place, Rule.Comparison.NONE, 0),
                Optional.of(side));
    }
}
