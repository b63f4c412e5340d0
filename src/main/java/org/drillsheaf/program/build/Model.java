package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The task with numbers instead of ids, without the drills that no program can hold: those whose prerequisite or lower rung
 * can stand in no earlier phase and was never taught. Immutable.
 */
final class Model {
    final BuildTask task;
    final List<PhaseModel> phases = new ArrayList<>();
    final int families;
    final int[] family;
    final int[] level;
    /** Drills of the program before, as far as they are offered. */
    final Choice before;

    private final List<List<int[]>> supports = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<Integer, List<Integer>> members = new HashMap<>();

    private final List<int[]> carriable = new ArrayList<>();

    Model(BuildTask task) {
        this(task, Integer.MAX_VALUE);
    }

    /** @param mostCarriable how many drills may be shared over a junction at most: those that do most for the two phases */
    Model(BuildTask task, int mostCarriable) {
        this.task = task;
        List<BuildTask.Candidate> candidates = task.candidates();
        Map<String, Integer> familyNumbers = new HashMap<>();
        family = new int[candidates.size()];
        level = new int[candidates.size()];
        for (int i = 0; i < candidates.size(); i++) {
            BuildTask.Candidate candidate = candidates.get(i);
            numbers.put(candidate.id(), i);
            Integer known = familyNumbers.putIfAbsent(candidate.family(), familyNumbers.size());
            family[i] = known == null ? familyNumbers.size() - 1 : known;
            level[i] = candidate.level();
            members.computeIfAbsent(family[i], f -> new ArrayList<>()).add(i);
        }
        families = familyNumbers.size();
        for (int i = 0; i < candidates.size(); i++) {
            supports.add(supportsOf(i));
        }
        List<Set<Integer>> possible = possible();
        for (int p = 0; p < task.phases().size(); p++) {
            phases.add(new PhaseModel(task, p, possible.get(p).stream().sorted().toList(), familyNumbers));
        }
        before = Choice.of(task.before().stream()
                .map(numbers::get)
                .filter(java.util.Objects::nonNull)
                .mapToInt(Integer::intValue)
                .toArray());
        for (int p = 0; p < phases.size(); p++) {
            int junction = p;
            carriable.add(java.util.Arrays.stream(phases.get(p).drill)
                    .filter(d -> junction == 0
                            ? before.has(d)
                            : phases.get(junction - 1).offers(d))
                    .boxed()
                    .sorted(Comparator.<Integer>comparingInt(d -> -worth(junction, d))
                            .thenComparing(d -> d))
                    .limit(mostCarriable)
                    .mapToInt(d -> d)
                    .toArray());
        }
    }

    /** What the drill gains in both phases of the junction, as the only one. */
    private int worth(int junction, int drill) {
        int here = phases.get(junction).worth(drill);
        return junction == 0 ? here : Math.min(here, phases.get(junction - 1).worth(drill));
    }

    List<BuildTask.Want> wants() {
        return task.wants();
    }

    /** Each array lists drills of which one must stand in an earlier phase. */
    List<int[]> supports(int drill) {
        return supports.get(drill);
    }

    Optional<Integer> number(String id) {
        return Optional.ofNullable(numbers.get(id));
    }

    List<Integer> familyMembers(int drill) {
        return members.getOrDefault(family[drill], List.of());
    }

    /** Drills that can be shared over the junction, those that gain most first; junction 0 is the one from the program before. */
    int[] carriable(int junction) {
        return carriable.get(junction).clone();
    }

    int carried(int junction) {
        return junction == 0 ? task.carriedBefore() : task.carried();
    }

    /** What the junction carries over from: the phase before, or the program before. */
    Choice earlier(Choice[] chosen, int junction) {
        return junction == 0 ? before : chosen[junction - 1];
    }

    /** Drills carried over beyond the number asked for. */
    int repeats(Choice[] chosen) {
        int sum = 0;
        for (int j = 0; j < chosen.length; j++) {
            sum += Math.max(0, earlier(chosen, j).sharedWith(chosen[j]) - carried(j));
        }
        return sum;
    }

    List<String> ids(Choice drills) {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < drills.size(); i++) {
            ids.add(task.candidates().get(drills.get(i)).id());
        }
        return ids;
    }

    private List<int[]> supportsOf(int drill) {
        BuildTask.Candidate candidate = task.candidates().get(drill);
        List<int[]> needed = new ArrayList<>();
        for (String prerequisite : candidate.prerequisites()) {
            if (!task.taught().contains(prerequisite)) {
                Integer number = numbers.get(prerequisite);
                needed.add(number == null ? new int[0] : new int[] {number});
            }
        }
        if (candidate.level() > 2 && !candidate.freeEntry()) {
            int below = familyMembers(drill).stream()
                    .mapToInt(m -> level[m])
                    .filter(l -> l < candidate.level())
                    .max()
                    .orElse(0);
            List<Integer> rungs = familyMembers(drill).stream()
                    .filter(m -> level[m] >= Math.max(below, 1) && level[m] <= candidate.level())
                    .toList();
            boolean taught = rungs.stream().anyMatch(m -> task.taught()
                    .contains(task.candidates().get(m).id()));
            if (!taught) {
                needed.add(rungs.stream().mapToInt(Integer::intValue).toArray());
            }
        }
        return needed;
    }

    private List<Set<Integer>> possible() {
        List<Set<Integer>> possible = new ArrayList<>();
        Set<Integer> earlier = new HashSet<>();
        for (int p = 0; p < task.phases().size(); p++) {
            Set<Integer> here = new HashSet<>();
            for (int i = 0; i < task.candidates().size(); i++) {
                BuildTask.Option option = task.candidates().get(i).options().get(p);
                if (option != null
                        && option.fewestMinutes() <= task.phases().get(p).mostMinutes()
                        && supported(i, earlier)) {
                    here.add(i);
                }
            }
            possible.add(here);
            earlier.addAll(here);
        }
        return possible;
    }

    private boolean supported(int drill, Set<Integer> earlier) {
        for (int[] oneOf : supports.get(drill)) {
            boolean any = false;
            for (int support : oneOf) {
                any |= earlier.contains(support);
            }
            if (!any) {
                return false;
            }
        }
        return true;
    }
}
