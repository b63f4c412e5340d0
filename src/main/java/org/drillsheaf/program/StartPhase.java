package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.NextStep;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;

/**
 * The phase to begin with and why. A first program begins with the first phase whose gate is not met by what was measured, at
 * latest with Reference, and with Settle while an extended body or an open question is there. The coach may choose another.
 */
record StartPhase(Phase phase, List<String> reasons) {

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
        String reason = "the re-screen says “" + step.words() + "” after " + before.title();
        return chosenBy(wishes, new StartPhase(next, List.of(reason)));
    }

    private static StartPhase chosenBy(CoachWishes wishes, StartPhase proposed) {
        if (wishes.start().isEmpty() || wishes.start().get().phase() == proposed.phase) {
            return proposed;
        }
        List<String> reasons = new ArrayList<>();
        String reason = wishes.start().get().reason();
        reasons.add("the coach chose it" + (reason.isEmpty() ? "" : ": " + reason));
        reasons.add("proposed was " + proposed.phase.title() + ", because " + String.join(", ", proposed.reasons));
        return new StartPhase(wishes.start().get().phase(), reasons);
    }

    private static StartPhase byReading(Reading reading, List<GateResult> gates, PhaseTable table) {
        List<String> settle = new ArrayList<>();
        for (PresentationReading held : reading.supported()) {
            if (table.settleFirst().contains(held.id())) {
                settle.add(held.name() + " holds");
            }
        }
        reading.layers().onTop().ifPresent(name -> settle.add(name + " is still on top"));
        for (PresentationReading open : reading.open()) {
            if (open.id().equals("none")) {
                continue;
            }
            settle.add(open.name() + " is open");
        }
        if (!settle.isEmpty()) {
            return new StartPhase(Phase.SETTLE, settle);
        }
        boolean onlyDoing = reading.supported().stream().anyMatch(p -> p.id().equals("none"));
        List<String> met = new ArrayList<>();
        for (Phase phase : List.of(Phase.SETTLE, Phase.RESTORE)) {
            Optional<String> missing = onlyDoing ? Optional.empty() : firstMissing(phase, gates);
            if (missing.isPresent()) {
                return new StartPhase(phase, List.of("its gate is not met by what was measured: " + missing.get()));
            }
            met.add(
                    onlyDoing
                            ? phase.title() + " has nothing to measure here"
                            : "the gate after " + phase.title() + " is met");
        }
        return new StartPhase(Phase.REFERENCE, met);
    }

    /** The first measured line of the gate after the phase that is not known to hold. */
    private static Optional<String> firstMissing(Phase phase, List<GateResult> gates) {
        Optional<GateResult> gate = gates.stream()
                .filter(g -> g.gate().id().startsWith(phase.id() + "-"))
                .findFirst();
        if (gate.isEmpty()) {
            return Optional.of("the gate after " + phase.title() + " was not read");
        }
        return gate.get().lines().stream()
                .filter(l -> l.required() && l.measured() && !l.truth().isTrue())
                .map(GateResult.Line::words)
                .findFirst();
    }
}
