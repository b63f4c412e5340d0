package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a program is worth, counted straight from the task without any of the search's shortcuts.
 *
 * @param coverage weight times missing coverage
 * @param minutes under the target
 * @param changes drills not planned before, and drills planned before that are gone
 * @param positions changes of position
 * @param repeats beyond the number asked for
 * @param equipment pieces by session
 */
public record Valuation(int coverage, int minutes, int changes, int positions, int repeats, int equipment) {

    /** @param drills ids by phase */
    public static Valuation of(BuildTask task, List<List<String>> drills) {
        int coverage = 0;
        int minutes = 0;
        int changes = 0;
        int positions = 0;
        int repeats = 0;
        int equipment = 0;
        for (int p = 0; p < drills.size(); p++) {
            BuildTask.PhaseTask phase = task.phases().get(p);
            List<String> here = drills.get(p);
            List<BuildTask.Candidate> chosen = new ArrayList<>();
            for (String id : drills.get(p)) {
                chosen.add(candidate(task, id));
            }
            for (BuildTask.GoalTarget goal : phase.goals()) {
                coverage += goal.weight() * Math.max(0, goal.target() - covered(goal.goal(), chosen));
            }
            int longest = 0;
            Set<String> places = new HashSet<>();
            Set<String> items = new HashSet<>();
            for (BuildTask.Candidate candidate : chosen) {
                BuildTask.Option option = candidate.options().get(p);
                longest += option == null ? 0 : option.mostMinutes();
                places.add(candidate.position());
                items.addAll(candidate.equipment());
                changes += phase.kept().isEmpty() || phase.kept().contains(candidate.id()) ? 0 : 1;
            }
            minutes += Math.max(0, phase.targetMinutes() - longest);
            changes +=
                    (int) phase.kept().stream().filter(id -> !here.contains(id)).count();
            positions += Math.max(0, places.size() - 1);
            equipment += items.size();
            Set<String> shared = new HashSet<>(p == 0 ? task.before() : drills.get(p - 1));
            shared.retainAll(Set.copyOf(drills.get(p)));
            repeats += Math.max(0, shared.size() - (p == 0 ? task.carriedBefore() : task.carried()));
        }
        return new Valuation(coverage, minutes, changes, positions, repeats, equipment);
    }

    /** Strongest drill in full, half of each further one rounded down; not cut at the target. */
    public static int covered(String goal, List<BuildTask.Candidate> chosen) {
        List<Integer> strengths = chosen.stream()
                .map(c -> c.strengths().getOrDefault(goal, 0))
                .sorted(java.util.Comparator.reverseOrder())
                .toList();
        int sum = 0;
        for (int i = 0; i < strengths.size(); i++) {
            sum += i == 0 ? strengths.get(i) : strengths.get(i) / 2;
        }
        return sum;
    }

    public long packed(Objective objective) {
        return objective.pack(coverage, minutes, changes, positions, repeats, equipment);
    }

    /** The levels of a packed number. */
    public static Valuation unpacked(long packed, Objective objective) {
        return new Valuation(
                objective.unpack(packed, Level.COVERAGE),
                objective.unpack(packed, Level.MINUTES),
                objective.unpack(packed, Level.CHANGES),
                objective.unpack(packed, Level.POSITIONS),
                objective.unpack(packed, Level.REPEATS),
                objective.unpack(packed, Level.EQUIPMENT));
    }

    private static BuildTask.Candidate candidate(BuildTask task, String id) {
        return task.candidate(id).orElseThrow(() -> new IllegalArgumentException(id + " is not offered"));
    }
}
