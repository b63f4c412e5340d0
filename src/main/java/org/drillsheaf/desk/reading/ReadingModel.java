package org.drillsheaf.desk.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.program.WishesEdit;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.CoachWishes;
import org.drillsheaf.program.GoalNeed;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.TestChange;
import org.drillsheaf.screen.Verdict;

/** What the sheet with the reading shows and does. Knows no toolkit. */
public final class ReadingModel {
    private final ClientCase client;

    public ReadingModel(ClientCase client) {
        this.client = client;
    }

    public ClientCase client() {
        return client;
    }

    private Vocabulary vocabulary() {
        return knowledge().vocabulary();
    }

    private Knowledge knowledge() {
        return client.evaluator().knowledge();
    }

    public Optional<Reading> reading() {
        return client.evaluation().get().flatMap(Evaluation::reading);
    }

    private Optional<ClientVisit> visit() {
        return client.evaluation().get().flatMap(Evaluation::visit);
    }

    /** Held at the visit before, and not held any more. */
    public boolean isFading(PresentationReading presentation) {
        return presentation.verdict() != Verdict.SUPPORTED
                && visit().flatMap(ClientVisit::before)
                        .flatMap(r -> r.presentation(presentation.id(), presentation.side()))
                        .filter(p -> p.verdict() == Verdict.SUPPORTED)
                        .isPresent();
    }

    /** The trade's words in the language of the window. */
    TradeWords trade() {
        return new TradeWords(client.workplace().words(), vocabulary());
    }

    /** The first test that a saying names. */
    public Optional<MovementTest> testIn(Saying saying) {
        return saying.names()
                .filter(n -> n.kind() == Saying.Name.Kind.TEST)
                .flatMap(n -> vocabulary().reading().battery().test(n.id()).stream())
                .findFirst();
    }

    /** What the re-screen shows; empty at a first visit. */
    public Optional<Course.Change> change() {
        return client.evaluation().get().flatMap(Evaluation::course).flatMap(c -> c.last()
                .change());
    }

    /** Number of tests and sides that changed in this way. */
    public int changed(TestChange.Kind kind) {
        return change().map(c -> (int) c.comparison().changes().stream()
                        .filter(t -> t.kind() == kind)
                        .count())
                .orElse(0);
    }

    /**
     * One goal in one phase.
     *
     * @param suggested the weight without the coach's wish
     */
    public record Weight(Phase phase, GoalNeed need, int suggested) {
        public boolean isChanged() {
            return need.weight() != suggested;
        }
    }

    /**
     * One goal with its weights in all phases.
     *
     * @param name in words
     */
    public record GoalRow(String goal, String name, List<Weight> weights) {}

    /** The goals by phase; empty while no program may be built. */
    public List<GoalRow> goals() {
        Optional<ClientVisit> visit = visit().filter(v -> v.reading().safety().isClear());
        if (visit.isEmpty()) {
            return List.of();
        }
        CoachWishes wishes = visit.get().wishes();
        Needs asked = needs(visit.get(), wishes);
        Needs suggested = needs(
                visit.get(), new CoachWishes(List.of(), wishes.pins(), wishes.doses(), wishes.order(), wishes.start()));
        List<GoalRow> rows = new ArrayList<>();
        List<String> languages = List.of(client.workplace().words().language(), "en");
        knowledge().catalogue().words().goals().forEach((id, goal) -> {
            List<Weight> weights = new ArrayList<>();
            for (Phase phase : Phase.values()) {
                need(asked, phase, id)
                        .ifPresent(n -> weights.add(new Weight(
                                phase,
                                n,
                                need(suggested, phase, id).map(GoalNeed::weight).orElse(n.weight()))));
            }
            if (weights.size() == Phase.values().length) {
                rows.add(new GoalRow(id, goal.name().best(languages), weights));
            }
        });
        return rows;
    }

    private Needs needs(ClientVisit visit, CoachWishes wishes) {
        return knowledge()
                .needsMaker()
                .first(visit.client(), visit.reading(), visit.safety(), wishes, visit.gates(knowledge()));
    }

    private static Optional<GoalNeed> need(Needs needs, Phase phase, String goal) {
        return needs.phase(phase).goals().stream()
                .filter(n -> n.goal().equals(goal))
                .findFirst();
    }

    /** @param weight 0 to 5; empty for the suggested one */
    public void weigh(Phase phase, String goal, OptionalInt weight, String name) {
        client.edit(name, "", visit -> WishesEdit.weight(visit, phase, goal, weight));
    }

    /** The phase the client is in, once a program was built. */
    public Optional<Phase> phaseNow() {
        return client.evaluation().get().flatMap(Evaluation::course).map(c -> c.last()
                .phase());
    }
}
