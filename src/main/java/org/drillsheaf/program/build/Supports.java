package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How many positions more the earlier phases need when a drill stands in a phase, because what it needs first must stand in one of
 * them. Up to {@link #MOST}, and where the phase has no more alone. Not safe for several threads.
 *
 * <p>Never too much: of several needs only the one that costs most counts, since one session may see to all of them; a session that holds
 * what is needed and is worse in what counts more than positions costs more than any number of these.
 */
final class Supports {
    /** More positions than this are not told apart. */
    private static final int MOST = 2;

    private final Model model;
    private final Objective objective;
    private final Node node;
    private final List<EveryChoice> searches = new ArrayList<>();
    private final long[] alone;
    private final Map<Question, Boolean> known = new HashMap<>();

    private record Question(int phase, int drill, int changes) {}

    /** @param alone what each phase costs at least, alone */
    Supports(Model model, Objective objective, Node node, Tally tally, long[] alone) {
        this.model = model;
        this.objective = objective;
        this.node = node;
        this.alone = alone;
        for (PhaseModel phase : model.phases) {
            searches.add(new EveryChoice(phase, objective, model.families, tally));
        }
    }

    /**
     * What the phases before this one cost more at least, packed.
     *
     * @param far in positions; from here on it is not asked how much more
     */
    long cost(int phase, Choice choice, int far) {
        int most = 0;
        for (int i = 0; i < choice.size(); i++) {
            most = Math.max(most, before(phase, choice.get(i), Math.min(MOST, far)));
        }
        return most == 0 ? 0 : objective.one(Level.POSITIONS, most) - sparedBefore(phase);
    }

    /** With more positions a phase may cost less of what counts less than positions, at most all of it. */
    private long sparedBefore(int phase) {
        long most = 0;
        for (int q = 0; q < phase; q++) {
            long rest = alone[q] - objective.above(Level.POSITIONS, alone[q]);
            most = Math.max(most, rest - objective.one(Level.POSITIONS, objective.unpack(rest, Level.POSITIONS)));
        }
        return most;
    }

    /** At least so many, and exactly where these are fewer than {@code far}. */
    private int before(int phase, int drill, int far) {
        int most = 0;
        for (int[] oneOf : model.supports(drill)) {
            int least = far;
            for (int support : oneOf) {
                for (int q = 0; q < phase && least > 0; q++) {
                    if (model.phases.get(q).offers(support) && !node.forbidden[q].has(support)) {
                        least = Math.min(least, Math.max(before(q, support, far), standing(q, support, far)));
                    }
                }
            }
            most = Math.max(most, least);
        }
        return most;
    }

    /** At least how many positions more the phase needs when it holds the drill: no more are told apart than were asked for. */
    private int standing(int phase, int drill, int far) {
        int least = objective.unpack(alone[phase], Level.POSITIONS);
        int more = 0;
        while (more < far && least + more < MOST && !can(new Question(phase, drill, least + more))) {
            more++;
        }
        return more;
    }

    private boolean can(Question question) {
        return known.computeIfAbsent(question, q -> can(q.phase, q.drill, q.changes));
    }

    /** Whether the phase can hold the drill in so many changes of position, none or one, and be as good in all that counts more. */
    private boolean can(int phase, int drill, int changes) {
        PhaseModel here = model.phases.get(phase);
        long own = here.positionOf(drill);
        if (changes == 0) {
            return some(phase, drill, own, changes);
        }
        for (int x = 0; x < here.positions; x++) {
            if (some(phase, drill, own | 1L << x, changes)) {
                return true;
            }
        }
        return false;
    }

    private boolean some(int phase, int drill, long positions, int changes) {
        long below = objective.above(Level.POSITIONS, alone[phase]) + objective.one(Level.POSITIONS, changes + 1);
        boolean[] any = new boolean[1];
        searches.get(phase)
                .below(
                        positions & node.positions[phase],
                        0,
                        node.forced[phase].with(drill),
                        node.forbidden[phase],
                        alone[phase],
                        below,
                        (choice, value) -> {
                            any[0] = true;
                            return false;
                        });
        return any[0];
    }
}
