package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.saying.Saying;

/**
 * Builds the best program for a client's needs from a catalogue, or says why there is none. The same needs and catalogue always
 * give the same program. Immutable; safe for several threads as far as {@link Safety} is.
 */
public final class Builder {
    private final Catalogue catalogue;
    private final Safety safety;
    private final PhaseTable table;
    private final BuilderSettings settings;
    private final ExactBuilder exact;
    private final KnownAnswers known;
    private final DrillHashes hashes;

    public Builder(Catalogue catalogue, Safety safety, PhaseTable table, BuilderSettings settings) {
        this.catalogue = catalogue;
        this.safety = safety;
        this.table = table;
        this.settings = settings;
        this.exact = new ExactBuilder(new Objective(settings.order()), settings.mostSteps());
        this.known = new KnownAnswers(0);
        this.hashes = new DrillHashes(catalogue);
    }

    private Builder(Builder like, ExactBuilder exact, KnownAnswers known) {
        this.catalogue = like.catalogue;
        this.safety = like.safety;
        this.table = like.table;
        this.settings = like.settings;
        this.exact = exact;
        this.known = known;
        this.hashes = like.hashes;
    }

    /**
     * The same builder, whose searches, and those of its explainers, end with what they have found as soon as that is asked for: a
     * program that says how far from the best it may be, or {@link Undecided}.
     *
     * @param stopAsked looked at every few thousand steps, by the thread that searches; may turn true at any time
     */
    public Builder stoppedBy(BooleanSupplier stopAsked) {
        return new Builder(this, exact.stoppedBy(stopAsked), known);
    }

    /** The same builder, which answers a task that is known already without a search. */
    public Builder knowing(KnownAnswers answers) {
        return new Builder(this, exact, answers);
    }

    /** A program, the requirements that clash, or why there is no program for home. */
    public BuildResult build(Needs needs) {
        return build(needs, offers(needs));
    }

    /** Every drill as this client may have it; judging poses takes most of the time, so do it once. */
    public Offers offers(Needs needs) {
        return Offers.of(catalogue, safety, needs);
    }

    /**
     * The same without judging poses again.
     *
     * @param judged for the same conditions, by this catalogue
     */
    public Offers offers(Needs needs, Offers judged) {
        if (!judged.areJudgedFor(needs.safety())) {
            throw new IllegalArgumentException("judged for other conditions");
        }
        return judged.again(catalogue, needs);
    }

    /** Answers questions about a program that was built for these needs and offers. */
    public Explainer explainer(Needs needs, Offers offers, Program program) {
        return new Explainer(catalogue, settings, exact, needs, offers, program);
    }

    /**
     * The same with offers that are there already.
     *
     * @param offers from {@link #offers} for the same needs
     */
    public BuildResult build(Needs needs, Offers offers) {
        return build(needs, offers, task -> Optional.of(known.to(task, () -> answer(task))))
                .orElseThrow();
    }

    /**
     * What {@link #build} gives, if nothing has to be searched for because the answer is known or none is needed.
     *
     * @param offers from {@link #offers} for the same needs
     */
    public Optional<BuildResult> ifKnown(Needs needs, Offers offers) {
        return build(needs, offers, task -> known.to(task).filter(Answer::found)); // why nothing fits is a search, too
    }

    private Optional<BuildResult> build(Needs needs, Offers offers, Function<BuildTask, Optional<Answer>> answers) {
        if (!needs.safety().waits().isEmpty()) {
            return Optional.of(new Waits(needs.safety().waits().stream()
                    .map(w -> w.reason())
                    .distinct()
                    .toList()));
        }
        if (needs.safety().inPersonOnly()) {
            return Optional.of(new InPersonOnly(List.of(Saying.phrase("refusal.too-many-conditions"))));
        }
        TaskMaker tasks = new TaskMaker(needs, offers, settings);
        BuildTask task = tasks.task();
        List<Saying> tooLittle = tooLittle(needs, offers, tasks);
        if (!tooLittle.isEmpty()) {
            return Optional.of(new InPersonOnly(tooLittle));
        }
        return answers.apply(task).map(answer -> result(needs, offers, tasks, task, answer));
    }

    private BuildResult result(Needs needs, Offers offers, TaskMaker tasks, BuildTask task, Answer answer) {
        if (answer.kind() == Answer.Kind.NOT_DECIDED) {
            return new Undecided(answer.looked(), answer.stopped());
        }
        if (!answer.found()) {
            return new ClashFinder(needs, offers, tasks, exact).find();
        }
        Objective objective = exact.objective();
        Swaps swaps =
                known.swaps(task, answer, () -> Swaps.of(task, objective, answer.drills(), settings.alternatives()));
        return new Assembly(catalogue, hashes, table, settings, needs, offers, tasks, task)
                .program(answer, objective, swaps);
    }

    /** Whether anything fits at all is asked first: that is soon said, while a search for the best among nothing may be long. */
    private Answer answer(BuildTask task) {
        return exact.fits(task, settings.mostSteps()).orElse(true) ? exact.solve(task) : Answer.nothingFits();
    }

    /** Drills that conditions leave, whatever the client owns or likes: too few are no home program. */
    private List<Saying> tooLittle(Needs needs, Offers offers, TaskMaker tasks) {
        List<Saying> reasons = new ArrayList<>();
        for (PhaseNeeds phase : needs.ahead()) {
            List<Offer> left = offers.all().stream()
                    .filter(o -> o.barriers().stream().allMatch(Barrier::isChoice))
                    .filter(o -> tasks.dose(o.id(), phase.phase()).isPresent())
                    .toList();
            long families =
                    left.stream().map(o -> o.drill().family()).distinct().count();
            if (left.size() < table.leastDrills() || families < table.leastFamilies()) {
                reasons.add(Saying.phrase("refusal.too-little")
                        .with("phase", phase.phase().saidName())
                        .with("drills", left.size())
                        .with("families", families)
                        .with("leastDrills", table.leastDrills())
                        .with("leastFamilies", table.leastFamilies()));
            }
        }
        return reasons;
    }
}
