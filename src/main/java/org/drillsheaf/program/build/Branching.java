package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies between the phases: wanted drills, prerequisites and lower rungs, no step down, drills carried over. Finds the
 * first of these that the best choices of the phases, put side by side, break, and splits the node into parts that between
 * them hold every program of the node and in which that break cannot happen again.
 */
final class Branching {
    private final Model model;
    private final int phases;

    Branching(Model model) {
        this.model = model;
        phases = model.phases.size();
    }

    /** The parts of the node, or empty when the choices of its phases break nothing. */
    Optional<List<Node>> split(Node node) {
        Choice[] chosen = node.choices();
        Optional<List<Node>> parts = missingWant(node, chosen);
        if (parts.isEmpty()) {
            parts = missingSupport(node, chosen);
        }
        if (parts.isEmpty()) {
            parts = stepDown(node, chosen);
        }
        if (parts.isEmpty()) {
            parts = tooFewCarried(node, chosen);
        }
        return parts;
    }

    private Optional<List<Node>> missingWant(Node node, Choice[] chosen) {
        for (BuildTask.Want want : model.wants()) {
            int drill = model.number(want.drill()).orElse(-1);
            if (want.phase().isPresent() || isIn(chosen, drill, phases)) {
                continue;
            }
            List<Node> parts = new ArrayList<>();
            forceOneOf(node, new int[] {drill}, phases, parts);
            return Optional.of(parts);
        }
        return Optional.empty();
    }

    private static boolean isIn(Choice[] chosen, int drill, int phasesBefore) {
        for (int p = 0; p < phasesBefore; p++) {
            if (chosen[p].has(drill)) {
                return true;
            }
        }
        return false;
    }

    /** One part for each drill and phase before {@code end}: it is in, those before it in this list are not. */
    private void forceOneOf(Node node, int[] drills, int end, List<Node> parts) {
        Node rest = node;
        for (int p = 0; p < end; p++) {
            for (int drill : drills) {
                if (!model.phases.get(p).offers(drill)) {
                    continue;
                }
                Node part = rest.child();
                if (force(part, drill, p)) {
                    parts.add(part);
                }
                Node without = rest.child();
                if (!without.forbid(drill, p)) {
                    return;
                }
                rest = without;
            }
        }
    }

    private Optional<List<Node>> missingSupport(Node node, Choice[] chosen) {
        for (int p = 0; p < phases; p++) {
            for (int i = 0; i < chosen[p].size(); i++) {
                int drill = chosen[p].get(i);
                for (int[] oneOf : model.supports(drill)) {
                    int phase = p;
                    if (java.util.Arrays.stream(oneOf).anyMatch(s -> isIn(chosen, s, phase))) {
                        continue;
                    }
                    List<Node> parts = new ArrayList<>();
                    Node without = node.child();
                    if (without.forbid(drill, p)) {
                        parts.add(without);
                    }
                    Node with = node.child();
                    if (force(with, drill, p)) {
                        forceOneOf(with, oneOf, p, parts);
                    }
                    return Optional.of(parts);
                }
            }
        }
        return Optional.empty();
    }

    private Optional<List<Node>> stepDown(Node node, Choice[] chosen) {
        for (int p = 0; p < phases; p++) {
            for (int i = 0; i < chosen[p].size(); i++) {
                int drill = chosen[p].get(i);
                if (lowerLater(chosen, drill, p)) {
                    List<Node> parts = new ArrayList<>();
                    Node without = node.child();
                    if (without.forbid(drill, p)) {
                        parts.add(without);
                    }
                    Node with = node.child();
                    if (force(with, drill, p)) {
                        parts.add(with);
                    }
                    return Optional.of(parts);
                }
            }
        }
        return Optional.empty();
    }

    private boolean lowerLater(Choice[] chosen, int drill, int phase) {
        for (int member : model.familyMembers(drill)) {
            for (int q = phase + 1; q < phases; q++) {
                if (model.level[member] < model.level[drill] && chosen[q].has(member)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Forces the drill and forbids what then cannot stand: another drill of its family, a lower one later, a higher one before. */
    private boolean force(Node node, int drill, int phase) {
        if (!model.phases.get(phase).offers(drill) || !node.force(drill, phase)) {
            return false;
        }
        for (int member : model.familyMembers(drill)) {
            for (int q = 0; q < phases; q++) {
                boolean out = q == phase
                        ? member != drill
                        : q > phase
                                ? model.level[member] < model.level[drill]
                                : model.level[member] > model.level[drill];
                if (out && model.phases.get(q).offers(member) && !node.forbid(member, q)) {
                    return false;
                }
            }
        }
        return true;
    }

    private Optional<List<Node>> tooFewCarried(Node node, Choice[] chosen) {
        for (int j = 0; j < phases; j++) {
            if (model.earlier(chosen, j).sharedWith(chosen[j]) >= model.carried(j)) {
                continue;
            }
            List<Node> parts = new ArrayList<>();
            int[] order = model.carriable(j);
            for (int k = node.carryFrom[j]; k < order.length; k++) {
                int drill = order[k];
                boolean already = node.forced[j].has(drill)
                        && model.earlier(node.forced, j).has(drill);
                if (already) {
                    continue;
                }
                Node part = node.child();
                part.carryFrom[j] = k + 1;
                if (force(part, drill, j) && (j == 0 || force(part, drill, j - 1))) {
                    parts.add(part);
                }
            }
            return Optional.of(parts);
        }
        return Optional.empty();
    }

    /** Parts for a node whose choices break nothing but repeat more than they must. */
    List<Node> splitRepeats(Node node) {
        for (int j = 0; j < phases; j++) {
            Choice here = node.choices()[j];
            Choice earlier = model.earlier(node.choices(), j);
            for (int i = 0; i < here.size(); i++) {
                int drill = here.get(i);
                boolean forcedEarlier = j == 0 || node.forced[j - 1].has(drill);
                if (!earlier.has(drill) || forcedEarlier && node.forced[j].has(drill)) {
                    continue;
                }
                List<Node> parts = new ArrayList<>();
                Node both = node.child();
                if (force(both, drill, j) && (j == 0 || force(both, drill, j - 1))) {
                    parts.add(both);
                }
                Node notHere = node.child();
                if (notHere.forbid(drill, j)) {
                    parts.add(notHere);
                }
                Node notEarlier = node.child();
                if (j > 0 && force(notEarlier, drill, j) && notEarlier.forbid(drill, j - 1)) {
                    parts.add(notEarlier);
                }
                return parts;
            }
        }
        throw new IllegalStateException("nothing is repeated without being forced");
    }
}
