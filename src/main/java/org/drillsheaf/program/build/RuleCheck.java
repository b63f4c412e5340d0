package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Every hard rule once more, read straight from the task and sharing nothing with the search. Runs on each answer before
 * anybody sees it.
 */
public final class RuleCheck {
    private final BuildTask task;
    private final List<List<String>> drills;
    private final List<String> broken = new ArrayList<>();

    private RuleCheck(BuildTask task, List<List<String>> drills) {
        this.task = task;
        this.drills = drills;
    }

    /**
     * The rules that a choice breaks, each in one clause; empty when it holds all of them.
     *
     * @param drills ids by phase
     */
    public static List<String> broken(BuildTask task, List<List<String>> drills) {
        RuleCheck check = new RuleCheck(task, drills);
        if (drills.size() != task.phases().size()) {
            return List.of("there are " + drills.size() + " phases instead of "
                    + task.phases().size());
        }
        if (check.everyDrillIsOffered()) {
            for (int p = 0; p < drills.size(); p++) {
                check.phase(p);
                check.carried(p);
                for (String id : drills.get(p)) {
                    check.prerequisites(p, id);
                    check.rungBelow(p, id);
                    check.noStepDown(p, id);
                }
            }
            check.wants();
        }
        return List.copyOf(check.broken);
    }

    private boolean everyDrillIsOffered() {
        for (int p = 0; p < drills.size(); p++) {
            for (String id : drills.get(p)) {
                if (task.candidate(id).filter(offeredIn(p)).isEmpty()) {
                    broken.add(id + " is not offered in phase " + p);
                }
            }
        }
        return broken.isEmpty();
    }

    private static Predicate<BuildTask.Candidate> offeredIn(int phase) {
        return candidate -> candidate.options().containsKey(phase);
    }

    private BuildTask.Candidate candidate(String id) {
        return task.candidate(id).orElseThrow();
    }

    private void phase(int p) {
        BuildTask.PhaseTask phase = task.phases().get(p);
        List<String> here = drills.get(p);
        if (here.size() < phase.fewest() || here.size() > phase.most()) {
            broken.add(phase.name() + " has " + here.size() + " drills");
        }
        Set<String> families = new HashSet<>();
        int minutes = 0;
        int strong = 0;
        for (String id : here) {
            BuildTask.Candidate candidate = candidate(id);
            BuildTask.Option option =
                    java.util.Objects.requireNonNull(candidate.options().get(p));
            if (!families.add(candidate.family())) {
                broken.add(phase.name() + " has two drills of the family " + candidate.family());
            }
            minutes += option.fewestMinutes();
            strong += option.strong() ? 1 : 0;
        }
        if (minutes > phase.mostMinutes()) {
            broken.add(phase.name() + " takes " + minutes + " minutes at least");
        }
        if (strong > phase.strongAtMost()) {
            broken.add(phase.name() + " has " + strong + " drills above its usual effort");
        }
    }

    private void carried(int p) {
        Set<String> earlier = p == 0 ? task.before() : Set.copyOf(drills.get(p - 1));
        int least = p == 0 ? task.carriedBefore() : task.carried();
        long shared = drills.get(p).stream().filter(earlier::contains).count();
        if (shared < least) {
            broken.add(task.phases().get(p).name() + " carries over " + shared + " drills instead of " + least);
        }
    }

    private Set<String> before(int p) {
        Set<String> known = new HashSet<>(task.taught());
        for (int q = 0; q < p; q++) {
            known.addAll(drills.get(q));
        }
        return known;
    }

    private void prerequisites(int p, String id) {
        for (String prerequisite : candidate(id).prerequisites()) {
            if (!before(p).contains(prerequisite)) {
                broken.add(id + " comes before its prerequisite " + prerequisite);
            }
        }
    }

    private void rungBelow(int p, String id) {
        BuildTask.Candidate candidate = candidate(id);
        if (candidate.level() <= 2 || candidate.freeEntry()) {
            return;
        }
        int below = 1;
        for (BuildTask.Candidate other : task.candidates()) {
            if (other.family().equals(candidate.family()) && other.level() < candidate.level()) {
                below = Math.max(below, other.level());
            }
        }
        for (String known : before(p)) {
            boolean isRung = task.candidate(known)
                    .filter(other -> other.family().equals(candidate.family()))
                    .filter(isBetween(below, candidate.level()))
                    .isPresent();
            if (isRung) {
                return;
            }
        }
        broken.add(id + " comes before the rung below it");
    }

    private static Predicate<BuildTask.Candidate> isBetween(int lowest, int highest) {
        return candidate -> candidate.level() >= lowest && candidate.level() <= highest;
    }

    private void noStepDown(int p, String id) {
        BuildTask.Candidate candidate = candidate(id);
        for (int q = p + 1; q < drills.size(); q++) {
            for (String later : drills.get(q)) {
                BuildTask.Candidate other = candidate(later);
                if (other.family().equals(candidate.family()) && other.level() < candidate.level()) {
                    broken.add(later + " steps down from " + id);
                }
            }
        }
    }

    private void wants() {
        for (BuildTask.Want want : task.wants()) {
            boolean there = want.phase().isPresent()
                    ? drills.get(want.phase().get()).contains(want.drill())
                    : drills.stream().anyMatch(d -> d.contains(want.drill()));
            if (!there) {
                broken.add(want.drill() + " is wanted and missing");
            }
        }
    }
}
