package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Valuation;
import org.drillsheaf.saying.Saying;

/**
 * Finds a smallest set of requirements that cannot hold together. A requirement without which everything else can hold is in every
 * such set; to these are added one, two, three others, until they cannot hold. If no three are enough, the set is what is left after
 * letting go of one requirement after the other. A question that is not decided in time never counts as a clash. One object answers
 * one question.
 */
final class ClashFinder {
    private static final int LARGEST_ADDED = 3;
    private static final int MOST_QUESTIONS = 2_000;
    private static final long STEPS_A_QUESTION = 500_000;

    private final Needs needs;
    private final TaskMaker tasks;
    private final ExactBuilder exact;
    private final List<Requirement> all;
    private boolean everythingDecided = true;
    private int questions;

    ClashFinder(Needs needs, Offers offers, TaskMaker tasks, ExactBuilder exact) {
        this.needs = needs;
        this.tasks = tasks;
        this.exact = exact;
        this.all = Requirement.of(needs, offers);
    }

    /** Only for needs of which it is shown that nothing fits. */
    BuildResult find() {
        if (clash(List.of())) {
            return new InPersonOnly(List.of(Saying.phrase("refusal.rules-alone")));
        }
        List<Requirement> needed =
                all.stream().filter(r -> fits(without(all, r))).toList();
        List<Requirement> others = all.stream().filter(r -> !needed.contains(r)).toList();
        for (int added = 0; added <= LARGEST_ADDED; added++) {
            Optional<List<Requirement>> clash = firstClash(needed, others, 0, added);
            if (clash.isPresent()) {
                return clashSet(clash.get(), everythingDecided);
            }
        }
        return clashSet(minimal(), false);
    }

    private ClashSet clashSet(List<Requirement> clash, boolean smallest) {
        List<Requirement> inOrder = all.stream().filter(clash::contains).toList();
        return new ClashSet(inOrder.stream().map(this::member).toList(), smallest);
    }

    private static List<Requirement> without(List<Requirement> requirements, Requirement one) {
        return requirements.stream().filter(r -> !r.equals(one)).toList();
    }

    /** Whether it is shown that these alone, with every other requirement let go, leave no program. */
    private boolean clash(List<Requirement> kept) {
        return !decided(kept).orElse(true);
    }

    /** Whether it is shown that these alone leave a program. */
    private boolean fits(List<Requirement> kept) {
        return decided(kept).orElse(false);
    }

    private Optional<Boolean> decided(List<Requirement> kept) {
        Set<Requirement> letGo = new HashSet<>(all);
        kept.forEach(letGo::remove);
        Optional<Boolean> answer =
                questions++ < MOST_QUESTIONS ? exact.fits(tasks.task(letGo), STEPS_A_QUESTION) : Optional.empty();
        everythingDecided &= answer.isPresent();
        return answer;
    }

    private List<Requirement> minimal() {
        questions = 0;
        List<Requirement> kept = all;
        for (Requirement one : all) {
            if (clash(without(kept, one))) {
                kept = without(kept, one);
            }
        }
        return kept;
    }

    private Optional<List<Requirement>> firstClash(
            List<Requirement> chosen, List<Requirement> others, int from, int added) {
        if (added == 0) {
            return clash(chosen) ? Optional.of(chosen) : Optional.empty();
        }
        for (int i = from; i < others.size(); i++) {
            List<Requirement> more = new ArrayList<>(chosen);
            more.add(others.get(i));
            Optional<List<Requirement>> found = firstClash(more, others, i + 1, added - 1);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private ClashSet.Member member(Requirement requirement) {
        BuildTask task = tasks.task(Set.of(requirement));
        Answer answer = exact.value(task);
        Saying then;
        if (answer.found()) {
            Valuation value = Valuation.unpacked(answer.value(), exact.objective());
            then = Saying.phrase("then.fits")
                    .with("phase", needs.start().saidName())
                    .with("count", answer.drills().get(0).size())
                    .with("open", Cost.of(value).open());
        } else {
            then = answer.kind() == Answer.Kind.NOTHING_FITS
                    ? Saying.phrase("then.clashes")
                    : Saying.phrase(
                            exact.fits(task, STEPS_A_QUESTION).orElse(false)
                                    ? "then.fits-somehow"
                                    : "then.not-decided");
        }
        return new ClashSet.Member(
                requirement.who(), requirement.what(), requirement.remedy(), requirement.letGo(), then);
    }
}
