package org.drillsheaf.program.build;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * The best program over all phases, exactly: a tree whose nodes are worked out by the {@link Chain}. The node with the lowest
 * bound is opened first; when its choices break nothing that lies between phases it is the best there is. The limit below which
 * programs count starts just above the root and grows until one is found, so that most of a chain can be left out. One object
 * answers one question; not safe for several threads.
 */
final class ProgramSearch {
    private record Queued(Node node, long number) {}

    private final Model model;
    private final Objective objective;
    private final PhaseMemo memo;
    private final Branching branching;
    private final Listing listing;
    private final Tally tally;
    private final long below;
    private long limit;
    /** The lowest bound of all that was left out. */
    private long beyond;

    private Choice @Nullable [] best;

    /** @param below only a program with a smaller packed value counts */
    ProgramSearch(Model model, Objective objective, PhaseMemo memo, Tally tally, long below) {
        this(model, objective, memo, tally, below, Listing.USUAL);
    }

    /** @param below only a program with a smaller packed value counts */
    ProgramSearch(Model model, Objective objective, PhaseMemo memo, Tally tally, long below, Listing listing) {
        this.model = model;
        this.objective = objective;
        this.memo = memo;
        this.branching = new Branching(model);
        this.tally = tally;
        this.below = below;
        this.listing = listing;
        limit = below;
    }

    /** The best program of all. */
    SearchResult run() {
        Optional<Node> root = root();
        if (root.isEmpty()) {
            return result(below, false);
        }
        long[] alone = alone(root.get());
        beyond = sum(alone);
        boolean areListed = listing.isFor(model.task);
        Limits limits = new Limits(objective, beyond, below, areListed);
        Tally some = tally.part(listing.mostSteps());
        Supports supports = new Supports(model, objective, root.get(), tally, alone);
        while (limits.next(beyond)) {
            long proved = beyond;
            limit = limits.now();
            beyond = Long.MAX_VALUE;
            PositionSets sets = new PositionSets(model, memo, objective, root.get(), alone, limit);
            if (areListed && sets.isWorthwhile() && !some.spent()) {
                SearchResult listed = new SetChains(
                                model, objective, root.get(), sets, supports, alone, limit, some, listing)
                        .search();
                if (listed.found()) {
                    limit = listed.value();
                    best = listed.drills().toArray(new Choice[0]);
                }
                if (tally.spent() || listed.found() && !listed.capped()) {
                    return result(tally.spent() ? proved : limit, tally.spent());
                }
                if (!listed.capped()) {
                    beyond = listed.bound();
                    continue;
                }
            }
            List<Node> parts = parts(root.get(), sets);
            if (tally.spent()) {
                return result(proved, true);
            }
            SearchResult result = bestFirst(parts, false);
            if (result.found() || result.capped()) {
                return new SearchResult(
                        result.drills(), result.value(), Math.max(proved, result.bound()), result.capped());
            }
        }
        limit = below;
        return result(below, false);
    }

    /** The node of all programs with the drills that are wanted in a phase; empty when one is not offered there. */
    Optional<Node> root() {
        Node root = Node.root(model.phases.size());
        for (BuildTask.Want want : model.wants()) {
            int drill = model.number(want.drill()).orElse(-1);
            if (want.phase().isPresent()) {
                int phase = want.phase().get();
                if (!model.phases.get(phase).offers(drill)) {
                    return Optional.empty();
                }
                root.force(drill, phase);
            }
        }
        return Optional.of(root);
    }

    /** Any program of the node below the limit. */
    SearchResult any(Node root) {
        return bestFirst(List.of(root), true);
    }

    /** What each phase of the node costs at least. */
    private long[] alone(Node node) {
        long[] alone = new long[model.phases.size()];
        for (int p = 0; p < alone.length; p++) {
            alone[p] = memo.solve(p, node.positions[p], node.forced[p], node.forbidden[p], Long.MAX_VALUE)
                    .value();
        }
        return alone;
    }

    private static long sum(long[] alone) {
        long sum = 0;
        for (long one : alone) {
            sum = one == Long.MAX_VALUE || sum == Long.MAX_VALUE ? Long.MAX_VALUE : sum + one;
        }
        return sum;
    }

    /** The node, or its parts by sets of positions where the limit leaves only positions open. */
    private List<Node> parts(Node root, PositionSets sets) {
        if (!sets.isWorthwhile()) {
            return List.of(root.child());
        }
        List<Node> parts = sets.parts();
        leaveOut(sets.leftOut());
        return parts;
    }

    private SearchResult bestFirst(List<Node> roots, boolean anyWillDo) {
        PriorityQueue<Queued> queue = new PriorityQueue<>(Comparator.<Queued>comparingLong(q -> q.node.bound)
                .thenComparing(q -> -q.node.depth)
                .thenComparing(Queued::number));
        long number = 0;
        for (Node root : roots) {
            queue.add(new Queued(root, number++));
        }
        while (!queue.isEmpty() && !(anyWillDo && best != null)) {
            Node node = queue.poll().node;
            if (node.bound >= limit) {
                leaveOut(node.bound);
                break;
            }
            if (!node.exact()) {
                long least = node.bound; // what a chain that is cut short says is no bound
                boolean worthwhile = workOut(node);
                if (tally.spent()) {
                    return result(least, true);
                }
                if (worthwhile) {
                    queue.add(new Queued(node, number++));
                }
                continue;
            }
            for (Node part : open(node)) {
                part.atLeast(repeats(part));
                if (part.bound < limit) {
                    queue.add(new Queued(part, number++));
                } else {
                    leaveOut(part.bound);
                }
            }
        }
        return result(limit, false);
    }

    /** The parts of a node that is worked out; none when it was itself an answer that leaves nothing to gain. */
    private List<Node> open(Node node) {
        Optional<List<Node>> parts = branching.split(node);
        if (parts.isPresent()) {
            return parts.get();
        }
        Choice[] chosen = node.choices();
        long value = node.found().value() + objective.one(Level.REPEATS, model.repeats(chosen));
        if (value < limit) {
            limit = value;
            best = chosen;
        } else {
            leaveOut(value);
        }
        return value > node.bound ? branching.splitRepeats(node) : List.of();
    }

    /** Works out the chain; false when nothing in the node can beat the best program found. */
    private boolean workOut(Node node) {
        long repeats = repeats(node);
        Chain.Found found =
                new Chain(model, memo, tally, node, limit == Long.MAX_VALUE ? limit : limit - repeats).best();
        if (found.chosen() == null) {
            leaveOut(found.value() == Long.MAX_VALUE ? found.value() : found.value() + repeats);
            return false;
        }
        node.workedOut(found, repeats);
        if (node.bound >= limit) {
            leaveOut(node.bound);
        }
        return node.bound < limit;
    }

    private void leaveOut(long bound) {
        tally.ruleOut();
        beyond = Math.min(beyond, bound);
    }

    private long repeats(Node node) {
        return objective.one(Level.REPEATS, model.repeats(node.forced));
    }

    private SearchResult result(long bound, boolean capped) {
        List<Choice> chosen = best == null ? List.of() : List.of(best);
        return new SearchResult(chosen, best == null ? Long.MAX_VALUE : limit, bound, capped);
    }
}
