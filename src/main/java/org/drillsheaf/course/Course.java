package org.drillsheaf.course;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.NeedsMaker;
import org.drillsheaf.screen.Comparison;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.GateRules;
import org.drillsheaf.screen.NextStep;
import org.drillsheaf.screen.Rescreen;

/** A client's visits in their order, with the phase that each leads to. */
public record Course(List<Stop> stops) {

    /**
     * One visit on the way.
     *
     * @param phase to work on from this visit on
     * @param change what the re-screen shows; empty at the first visit
     */
    public record Stop(ClientVisit visit, Phase phase, Optional<Change> change) {

        /** Whether the re-screen sends the client to a clinician before anything goes on. */
        public boolean refers() {
            return change.filter(c -> c.decision().step() == NextStep.REFER).isPresent();
        }
    }

    /**
     * What a re-screen shows.
     *
     * @param gate out of the phase that the client was in
     */
    public record Change(Phase phaseBefore, Comparison comparison, GateResult gate, GateRules.Decision decision) {}

    public Course {
        stops = List.copyOf(stops);
    }

    public static Course of(List<ClientVisit> visits, Knowledge knowledge) {
        NeedsMaker needs = knowledge.needsMaker();
        GateRules rules = new GateRules(knowledge.vocabulary().reading());
        List<Stop> stops = new ArrayList<>();
        for (ClientVisit visit : visits) {
            if (stops.isEmpty()) {
                Phase start = needs.first(
                                visit.client(), visit.reading(), visit.safety(), visit.wishes(), visit.gates(knowledge))
                        .start();
                stops.add(new Stop(visit, start, Optional.empty()));
            } else {
                Stop before = stops.get(stops.size() - 1);
                Change change = change(before, visit, stepsBack(stops), rules, knowledge);
                Phase phase = needs.phaseAfter(before.phase(), change.decision().step(), visit.wishes());
                stops.add(new Stop(visit, phase, Optional.of(change)));
            }
        }
        return new Course(stops);
    }

    public Stop last() {
        return stops.get(stops.size() - 1);
    }

    private static Change change(Stop before, ClientVisit now, int stepsBack, GateRules rules, Knowledge knowledge) {
        Rescreen rescreen = new Rescreen(
                knowledge.vocabulary().reading().battery(),
                knowledge.vocabulary().reading().presentations());
        Comparison comparison = rescreen.compare(now.client(), before.visit().reading(), now.reading());
        GateResult gate =
                rules.gate(knowledge.vocabulary().gates().get(before.phase().ordinal()), now.asked());
        long weeks = ChronoUnit.WEEKS.between(
                before.visit().visit().date(), now.visit().date());
        GateRules.Decision decision = rules.decide(gate, comparison, now.asked(), weeks, stepsBack);
        return new Change(before.phase(), comparison, gate, decision);
    }

    /** How many steps back lie in a row at the end of the course so far. */
    private static int stepsBack(List<Stop> stops) {
        int count = 0;
        for (int i = stops.size() - 1; i >= 0; i--) {
            boolean back = stops.get(i)
                    .change()
                    .filter(c -> c.decision().step() == NextStep.STEP_BACK)
                    .isPresent();
            if (!back) {
                return count;
            }
            count++;
        }
        return count;
    }
}
