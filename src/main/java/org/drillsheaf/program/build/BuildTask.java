package org.drillsheaf.program.build;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The builder's problem as plain words and whole numbers, with everything about this client already worked out: which drill
 * may stand in which phase and for how many minutes, what the goals ask, what must be carried over. Phases are numbered from
 * 0, the one the client works on now.
 *
 * @param phases one to four, in order
 * @param candidates every drill the client may do at all, sorted by id; one without options only counts as a rung of its family
 * @param carried least number of drills that neighbouring phases share
 * @param taught ids of drills known from earlier programs
 * @param before drills of the program before, for the carry-over into phase 0; empty for a first program
 * @param carriedBefore least number of drills of {@code before} in phase 0
 * @param wants drills that must stand somewhere or in one phase
 */
public record BuildTask(
        List<PhaseTask> phases,
        List<Candidate> candidates,
        int carried,
        Set<String> taught,
        Set<String> before,
        int carriedBefore,
        List<Want> wants) {

    /** The builder packs its objective into one number; larger tasks would not fit. Minutes a session. */
    public static final int LONGEST_SESSION = 240;

    public BuildTask {
        phases = List.copyOf(phases);
        candidates =
                candidates.stream().sorted(Comparator.comparing(Candidate::id)).toList();
        taught = Set.copyOf(taught);
        before = Set.copyOf(before);
        wants = List.copyOf(wants);
        if (phases.isEmpty() || phases.size() > 4) {
            throw new IllegalArgumentException("one to four phases, not " + phases.size());
        }
        Set<String> seen = new HashSet<>();
        for (Candidate candidate : candidates) {
            if (!seen.add(candidate.id())) {
                throw new IllegalArgumentException("the drill " + candidate.id() + " is offered twice");
            }
        }
    }

    /** The drill of this id, if the client may do it at all. */
    Optional<Candidate> candidate(String id) {
        int low = 0;
        int high = candidates.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int order = candidates.get(middle).id().compareTo(id);
            if (order == 0) {
                return Optional.of(candidates.get(middle));
            }
            low = order < 0 ? middle + 1 : low;
            high = order < 0 ? high : middle - 1;
        }
        return Optional.empty();
    }

    /** The same without anything that makes one program better than another: what is left is whether there is one. */
    BuildTask withRulesOnly() {
        return new BuildTask(
                phases.stream()
                        .map(p -> new PhaseTask(
                                p.name(),
                                List.of(),
                                p.fewest(),
                                p.most(),
                                0,
                                p.mostMinutes(),
                                p.strongAtMost(),
                                Set.of()))
                        .toList(),
                candidates.stream()
                        .map(c -> new Candidate(
                                c.id(),
                                c.family(),
                                c.level(),
                                "",
                                Set.of(),
                                Map.of(),
                                c.prerequisites(),
                                c.freeEntry(),
                                c.options()))
                        .toList(),
                carried,
                taught,
                before,
                carriedBefore,
                wants);
    }

    /**
     * One phase.
     *
     * @param name for messages
     * @param fewest drills, hard
     * @param most drills, hard
     * @param targetMinutes what a session should fill
     * @param mostMinutes hard, at least {@code targetMinutes}
     * @param strongAtMost how many drills above the phase's usual effort
     * @param kept drills that the program before had planned for this phase; any other, and any of these left out, counts as a change; empty: none does
     */
    public record PhaseTask(
            String name,
            List<GoalTarget> goals,
            int fewest,
            int most,
            int targetMinutes,
            int mostMinutes,
            int strongAtMost,
            Set<String> kept) {
        public PhaseTask {
            goals = List.copyOf(goals);
            kept = Set.copyOf(kept);
            if (targetMinutes > mostMinutes || mostMinutes > LONGEST_SESSION || fewest < 0 || most > 12) {
                throw new IllegalArgumentException("phase " + name + " asks for what cannot be packed");
            }
        }
    }

    /** What a goal asks of a phase: weight 1 to 9, target 1 to 12. */
    public record GoalTarget(String goal, int weight, int target) {
        public GoalTarget {
            if (weight < 0 || weight > 9 || target < 0 || target > 12) {
                throw new IllegalArgumentException("goal " + goal + ": weight " + weight + ", target " + target);
            }
        }
    }

    /**
     * A drill as the builder sees it.
     *
     * @param freeEntry the coach's pin lets it in without the rungs below
     * @param options phase number to what the drill would take there
     */
    public record Candidate(
            String id,
            String family,
            int level,
            String position,
            Set<String> equipment,
            Map<String, Integer> strengths,
            Set<String> prerequisites,
            boolean freeEntry,
            Map<Integer, Option> options) {
        public Candidate {
            equipment = java.util.Collections.unmodifiableSet(new TreeSet<>(equipment));
            strengths = java.util.Collections.unmodifiableMap(new TreeMap<>(strengths));
            prerequisites = java.util.Collections.unmodifiableSet(new TreeSet<>(prerequisites));
            options = java.util.Collections.unmodifiableMap(new TreeMap<>(options));
        }

        /** The same drill in no phase; it still counts as a rung of its family. */
        public Candidate notOffered() {
            return new Candidate(id, family, level, position, equipment, strengths, prerequisites, freeEntry, Map.of());
        }
    }

    /**
     * A drill in a phase. Every whole number of minutes between the two can be had.
     *
     * @param strong above the phase's usual effort
     */
    public record Option(int fewestMinutes, int mostMinutes, boolean strong) {
        public Option {
            if (fewestMinutes < 1 || mostMinutes < fewestMinutes) {
                throw new IllegalArgumentException("minutes from " + fewestMinutes + " to " + mostMinutes);
            }
        }
    }

    /** A drill that must stand in one phase, or, without one, in at least one. */
    public record Want(String drill, Optional<Integer> phase) {}
}
