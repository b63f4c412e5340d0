package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Valuation;

/**
 * Finds a smallest set of requirements that cannot hold together: every single one, every two, every three; then, if all of
 * those can, what is left after letting go of one after the other. One object answers one question.
 */
final class ClashFinder {
    private static final int LARGEST_TRIED = 3;

    private final Needs needs;
    private final TaskMaker tasks;
    private final ExactBuilder exact;
    private final List<Requirement> all;
    private boolean everythingDecided = true;

    ClashFinder(Needs needs, Offers offers, Catalogue catalogue, TaskMaker tasks, ExactBuilder exact) {
        this.needs = needs;
        this.tasks = tasks;
        this.exact = exact;
        this.all = Requirement.of(needs, offers, catalogue);
    }

    BuildResult find() {
        if (clash(List.of())) {
            return new InPersonOnly(
                    List.of("Even without any wish or limit of the client or coach no program holds the rules of the"
                            + " phases; too little is left to choose from."));
        }
        List<Requirement> set = minimal();
        List<Requirement> smaller = smallerThan(set.size());
        List<Requirement> clash = smaller.isEmpty() ? set : smaller;
        boolean smallest = everythingDecided && clash.size() <= LARGEST_TRIED + 1;
        return new ClashSet(clash.stream().map(this::member).toList(), smallest);
    }

    /** Whether these alone, with every other requirement let go, leave no program. An undecided question counts as none. */
    private boolean clash(List<Requirement> kept) {
        Set<Requirement> letGo = new HashSet<>(all);
        kept.forEach(letGo::remove);
        Answer answer = exact.value(tasks.task(letGo));
        if (answer.kind() == Answer.Kind.NOT_DECIDED) {
            everythingDecided = false;
        }
        return answer.kind() == Answer.Kind.NOTHING_FITS;
    }

    private List<Requirement> minimal() {
        List<Requirement> kept = new ArrayList<>(all);
        for (Requirement one : all) {
            List<Requirement> without = new ArrayList<>(kept);
            without.remove(one);
            if (clash(without)) {
                kept = without;
            }
        }
        return kept;
    }

    private List<Requirement> smallerThan(int size) {
        for (int tried = 1; tried < size && tried <= LARGEST_TRIED; tried++) {
            Optional<List<Requirement>> found = firstClash(new ArrayList<>(), 0, tried);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return List.of();
    }

    private Optional<List<Requirement>> firstClash(List<Requirement> chosen, int from, int size) {
        if (chosen.size() == size) {
            return clash(chosen) ? Optional.of(List.copyOf(chosen)) : Optional.empty();
        }
        for (int i = from; i < all.size(); i++) {
            chosen.add(all.get(i));
            Optional<List<Requirement>> found = firstClash(chosen, i + 1, size);
            if (found.isPresent()) {
                return found;
            }
            chosen.remove(chosen.size() - 1);
        }
        return Optional.empty();
    }

    private ClashSet.Member member(Requirement requirement) {
        BuildTask task = tasks.task(Set.of(requirement));
        Answer answer = exact.value(task);
        String then;
        if (answer.found()) {
            Valuation value = Valuation.unpacked(answer.value(), exact.objective());
            then = "Then a program fits: " + needs.start().title() + " has "
                    + answer.drills().get(0).size() + " drills; " + missing(value);
        } else {
            then = answer.kind() == Answer.Kind.NOTHING_FITS
                    ? "Then something else still clashes."
                    : "Whether a program then fits was not decided within the limit of the search.";
        }
        return new ClashSet.Member(
                requirement.who(), requirement.what(), requirement.remedy(), requirement.letGo(), then);
    }

    private static String missing(Valuation value) {
        String goals = value.coverage() == 0
                ? "every goal is covered"
                : value.coverage() + " points of weighted coverage are missing";
        return goals + (value.minutes() == 0 ? "." : ", " + value.minutes() + " minutes stay unused.");
    }
}
