package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.NextStep;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;

/**
 * The phase to begin with and why. A first program begins with the first phase whose gate is not met by what was measured, at
 * latest with Reference, and with Settle while an extended body or an open question is there. The coach may choose another.
 */
record StartPhase(Phase phase, List<Saying> reasons) {

    static StartPhase first(Reading reading, List<GateResult> gates, PhaseTable table, CoachWishes wishes) {
        return chosenBy(wishes, byReading(reading, gates, table));
    }

    static StartPhase after(Phase before, NextStep step, CoachWishes wishes) {
        Phase next =
                switch (step) {
                    case ADVANCE -> before.next().orElse(before);
                    case STAY -> before;
                    case STEP_BACK, REFER -> Phase.values()[Math.max(0, before.ordinal() - 1)];
                };
        Saying reason =
                Saying.phrase("start.re-screen").with("step", step.words()).with("phase", before.saidName());
        return chosenBy(wishes, new StartPhase(next, List.of(reason)));
    }

    private static StartPhase chosenBy(CoachWishes wishes, StartPhase proposed) {
        if (wishes.start().isEmpty() || wishes.start().get().phase() == proposed.phase) {
            return proposed;
        }
        List<Saying> reasons = new ArrayList<>();
        reasons.add(Reasons.withReason(
                Saying.phrase("start.coach"), wishes.start().get().reason()));
        reasons.add(Saying.phrase("start.proposed")
                .with("phase", proposed.phase.saidName())
                .with("reasons", Saying.joined(Saying.Joint.COMMA, proposed.reasons)));
        return new StartPhase(wishes.start().get().phase(), reasons);
    }

    private static StartPhase byReading(Reading reading, List<GateResult> gates, PhaseTable table) {
        List<Saying> settle = new ArrayList<>();
        for (PresentationReading held : reading.supported()) {
            if (table.settleFirst().contains(held.id())) {
                settle.add(Saying.phrase("rule.holds").with("what", held.name()));
            }
        }
        reading.layers()
                .onTop()
                .ifPresent(name -> settle.add(Saying.phrase("start.on-top").with("name", name)));
        for (PresentationReading open : reading.open()) {
            if (open.id().equals("none")) {
                continue;
            }
            settle.add(Saying.phrase("rule.open").with("what", open.name()));
        }
        if (!settle.isEmpty()) {
            return new StartPhase(Phase.SETTLE, settle);
        }
        boolean onlyDoing = reading.supported().stream().anyMatch(p -> p.id().equals("none"));
        List<Saying> met = new ArrayList<>();
        for (Phase phase : List.of(Phase.SETTLE, Phase.RESTORE)) {
            Optional<Saying> missing = onlyDoing ? Optional.empty() : firstMissing(phase, gates);
            if (missing.isPresent()) {
                return new StartPhase(
                        phase, List.of(Saying.phrase("start.gate-not-met").with("line", missing.get())));
            }
            met.add(Saying.phrase(onlyDoing ? "start.nothing-to-measure" : "start.gate-met")
                    .with("phase", phase.saidName()));
        }
        return new StartPhase(Phase.REFERENCE, met);
    }

    /** The first measured line of the gate after the phase that is not known to hold. */
    private static Optional<Saying> firstMissing(Phase phase, List<GateResult> gates) {
        Optional<GateResult> gate = gates.stream()
                .filter(g -> g.gate().id().startsWith(phase.id() + "-"))
                .findFirst();
        if (gate.isEmpty()) {
            return Optional.of(Saying.phrase("start.gate-not-read").with("phase", phase.saidName()));
        }
        return gate.get().lines().stream()
                .filter(l -> l.required() && l.measured() && !l.truth().isTrue())
                .map(GateResult.Line::words)
                .findFirst();
    }
}
