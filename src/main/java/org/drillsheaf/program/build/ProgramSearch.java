package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * The best program over all phases, exactly: a tree whose root lets every phase choose alone. The node with the lowest bound
 * is opened first; when the choices of its phases fit together it is the best there is. One object answers one question; not
 * safe for several threads.
 */
final class ProgramSearch {
    private record Queued(Node node, long number) {}

    private final Model model;
    private final Objective objective;
    private final long nodeCap;
    private final PhaseMemo memo;
    private final BlockBounds blocks;
    private final Tally tally;
    private long nodes;
    private long limit;
    private Choice @Nullable [] best;

    /**
     * @param nodeCap tree nodes after which the search gives up and says how far it is from the bound
     * @param below only a program with a smaller packed value counts
     */
    ProgramSearch(
            Model model,
            Objective objective,
            PhaseMemo memo,
            BlockBounds blocks,
            Tally tally,
            long nodeCap,
            long below) {
        this.model = model;
        this.objective = objective;
        this.memo = memo;
        this.blocks = blocks;
        this.tally = tally;
        this.nodeCap = nodeCap;
        this.limit = below;
    }

    /** The best program of all. */
    SearchResult run() {
        Optional<Node> root = root();
        return root.isEmpty() ? result(Long.MAX_VALUE, false) : run(root.get(), false);
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

    /**
     * The best program of a node.
     *
     * @param anyWillDo stop at the first program below the limit
     */
    SearchResult run(Node root, boolean anyWillDo) {
        if (blocks.impossible() || !workOut(root)) {
            return result(limit, false);
        }
        List<PhaseAnswer> alone = new ArrayList<>();
        for (int p = 0; p < model.phases.size(); p++) {
            alone.add(root.answer(p));
        }
        Branching branching = new Branching(model, alone);
        new Dive(this, branching).from(root);
        return anyWillDo && best != null ? result(root.bound, false) : bestFirst(root, branching, anyWillDo);
    }

    private SearchResult bestFirst(Node root, Branching branching, boolean anyWillDo) {
        PriorityQueue<Queued> open = new PriorityQueue<>(Comparator.<Queued>comparingLong(q -> q.node.bound)
                .thenComparing(q -> -q.node.depth)
                .thenComparing(Queued::number));
        long number = 0;
        open.add(new Queued(root, number++));
        while (!open.isEmpty() && !(anyWillDo && best != null)) {
            Node node = open.poll().node;
            if (node.bound >= limit) {
                break;
            }
            if (nodes >= nodeCap) {
                return result(node.bound, true);
            }
            if (!node.exact()) {
                nodes++;
                tally.nodes++;
                if (workOut(node)) {
                    open.add(new Queued(node, number++));
                } else {
                    tally.ruledOut++;
                }
                continue;
            }
            for (Node part : open(node, branching)) {
                setBound(part);
                if (part.bound < limit) {
                    open.add(new Queued(part, number++));
                } else {
                    tally.ruledOut++;
                }
            }
        }
        return result(limit, false);
    }

    /** The parts of a node that is worked out; none when it was itself an answer that leaves nothing to gain. */
    List<Node> open(Node node, Branching branching) {
        Optional<List<Node>> parts = branching.split(node);
        if (parts.isPresent()) {
            return parts.get();
        }
        Choice[] chosen = new Choice[model.phases.size()];
        for (int p = 0; p < chosen.length; p++) {
            chosen[p] = node.answer(p).drills();
        }
        long value = node.phasesAtLeast() + objective.one(Level.REPEATS, model.repeats(chosen));
        if (value < limit) {
            limit = value;
            best = chosen;
        }
        return value > node.bound ? branching.splitRepeats(node) : List.of();
    }

    /** Solves the phases that are not worked out; false when nothing in the node can beat the best program found. */
    boolean workOut(Node node) {
        long repeats = objective.one(Level.REPEATS, model.repeats(node.forced));
        for (int p = 0; p < model.phases.size(); p++) {
            if (node.answers[p] != null) {
                continue;
            }
            Optional<PhaseAnswer> answer =
                    memo.solve(model.phases.get(p), node.forced[p], node.forbidden[p], room(node, p, repeats));
            if (answer.isEmpty()) {
                return false;
            }
            node.answers[p] = answer.get();
        }
        setBound(node);
        return node.bound < limit;
    }

    /** What one phase may cost at most so that the whole still beats the best program found. */
    private long room(Node node, int phase, long repeats) {
        if (limit == Long.MAX_VALUE) {
            return Long.MAX_VALUE;
        }
        long others = node.phasesAtLeast() - node.phaseAtLeast(phase) + repeats;
        long inBlocks = blocks.before(node)[phase] + blocks.from(node)[phase + 1];
        return limit - Math.max(others, inBlocks);
    }

    private void setBound(Node node) {
        long alone = node.phasesAtLeast() + objective.one(Level.REPEATS, model.repeats(node.forced));
        long inBlocks = blocks.from(node)[0];
        node.bound = Math.max(node.bound, Math.max(alone, inBlocks));
    }

    private SearchResult result(long bound, boolean capped) {
        List<Choice> chosen = best == null ? List.of() : List.of(best);
        return new SearchResult(chosen, best == null ? Long.MAX_VALUE : limit, bound, capped);
    }

    boolean hasAnswer() {
        return best != null;
    }
}
