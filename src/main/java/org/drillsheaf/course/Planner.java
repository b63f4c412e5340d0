package org.drillsheaf.course;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.drillsheaf.program.BuildResult;
import org.drillsheaf.program.Builder;
import org.drillsheaf.program.KnownAnswers;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Offers;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Remembered;
import org.drillsheaf.program.Undecided;

/**
 * Builds the programs along courses and remembers the last ones, so that only what changed is built again: for a client that
 * is worked on. Safe for several threads.
 */
public final class Planner {
    private static final int REMEMBERED = 24;
    /** A client's conditions seldom change from key to key; visits may differ, since weeks are counted. */
    private static final int JUDGED = 4;

    private final Knowledge knowledge;
    private final Builder builder;
    private final Remembered<Needs, BuildResult> built = new Remembered<>(REMEMBERED);
    /** The last first. */
    private final Deque<Offers> judged = new ArrayDeque<>();

    public Planner(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.builder = knowledge.builder().knowing(new KnownAnswers(REMEMBERED));
    }

    /**
     * The program of the last visit. A file holds no programs, so those of the earlier visits are built again from what was
     * known then; the last one changes no more of them than it must.
     *
     * @throws IllegalArgumentException when the safety answers of no visit are clear
     */
    public Planning along(Course course) {
        return along(course, () -> false);
    }

    /**
     * The same with a search that can be stopped. What a stopped search gives is the best found so far, and is not remembered.
     *
     * @param stopAsked looked at every few thousand steps; may turn true at any time
     */
    public Planning along(Course course, BooleanSupplier stopAsked) {
        return along(course, needs -> Optional.of(build(needs, stopAsked))).orElseThrow();
    }

    /**
     * The same if every answer is remembered and nothing has to be searched for, else empty: a matter of milliseconds.
     *
     * @throws IllegalArgumentException when the safety answers of no visit are clear
     */
    public Optional<Planning> ifKnown(Course course) {
        return along(course, this::known);
    }

    private Optional<Planning> along(Course course, Function<Needs, Optional<BuildResult>> results) {
        Optional<Program> before = Optional.empty();
        Planning planning = null;
        for (Course.Stop stop : course.stops()) {
            if (!stop.visit().reading().safety().isClear()) {
                continue;
            }
            Needs needs = needs(stop, before);
            Optional<BuildResult> result = results.apply(needs);
            if (result.isEmpty()) {
                return Optional.empty();
            }
            planning = new Planning(needs, result.get());
            if (result.get() instanceof Program program) {
                before = Optional.of(program);
            }
        }
        if (planning == null) {
            throw new IllegalArgumentException("the last visit must be clear");
        }
        return Optional.of(planning);
    }

    private BuildResult build(Needs needs, BooleanSupplier stopAsked) {
        return built.to(
                needs, () -> builder.stoppedBy(stopAsked).build(needs, offers(needs)), result -> !isStopped(result));
    }

    private Optional<BuildResult> known(Needs needs) {
        return built.to(needs)
                .or(() -> judged(needs).flatMap(offers -> builder.ifKnown(needs, builder.offers(needs, offers))));
    }

    private Offers offers(Needs needs) {
        Offers offers = judged(needs).map(known -> builder.offers(needs, known)).orElseGet(() -> builder.offers(needs));
        synchronized (judged) {
            judged.removeIf(o -> o.areJudgedFor(needs.safety()));
            judged.addFirst(offers);
            while (judged.size() > JUDGED) {
                judged.removeLast();
            }
        }
        return offers;
    }

    /** The drills as judged for the same conditions. */
    private Optional<Offers> judged(Needs needs) {
        synchronized (judged) {
            return judged.stream().filter(o -> o.areJudgedFor(needs.safety())).findFirst();
        }
    }

    private static boolean isStopped(BuildResult result) {
        return result instanceof Program program && program.proof().stopped()
                || result instanceof Undecided undecided && undecided.stopped();
    }

    private Needs needs(Course.Stop stop, Optional<Program> before) {
        ClientVisit visit = stop.visit();
        if (before.isPresent() && stop.change().isPresent()) {
            return knowledge
                    .needsMaker()
                    .after(
                            before.get(),
                            stop.change().get().decision().step(),
                            visit.client(),
                            visit.reading(),
                            visit.safety(),
                            visit.wishes());
        }
        return knowledge
                .needsMaker()
                .first(visit.client(), visit.reading(), visit.safety(), visit.wishes(), visit.gates(knowledge));
    }
}
