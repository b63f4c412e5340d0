package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/** What changed against the program before, for every phase that was planned in both. */
final class Changes {
    private Changes() {}

    static List<ProgramChange> between(Needs needs, Offers offers, List<PhasePlan> plans) {
        if (needs.before().isEmpty()) {
            return List.of();
        }
        Program before = needs.before().get();
        List<ProgramChange> changes = new ArrayList<>();
        for (PhasePlan plan : plans) {
            PhasePlan earlier = before.phase(plan.phase());
            if (plan.entries().isEmpty() || earlier.entries().isEmpty()) {
                continue;
            }
            for (Entry entry : earlier.entries()) {
                if (find(plan, entry.drill()).isEmpty()) {
                    changes.add(new ProgramChange(
                            plan.phase(),
                            ProgramChange.Kind.LEFT_OUT,
                            entry.drill(),
                            whyOut(entry.drill(), plan.phase(), offers, needs)));
                }
            }
            for (Entry entry : plan.entries()) {
                Optional<Entry> old = find(earlier, entry.drill());
                if (old.isEmpty()) {
                    changes.add(new ProgramChange(
                            plan.phase(),
                            ProgramChange.Kind.ADDED,
                            entry.drill(),
                            entry.reasons().get(0)));
                } else if (!old.get().dose().equals(entry.dose())) {
                    changes.add(new ProgramChange(
                            plan.phase(),
                            ProgramChange.Kind.DOSE,
                            entry.drill(),
                            Saying.phrase("changed.dose")
                                    .with("before", words(old.get().dose()))
                                    .with("now", words(entry.dose()))));
                }
            }
        }
        return changes;
    }

    private static Optional<Entry> find(PhasePlan plan, String drill) {
        return plan.entries().stream().filter(e -> e.drill().equals(drill)).findFirst();
    }

    private static Saying whyOut(String drill, Phase phase, Offers offers, Needs needs) {
        Optional<Offer> offer = offers.offer(drill);
        if (offer.isEmpty()) {
            return Saying.phrase("changed.not-in-use");
        }
        if (!offer.get().isOpen()) {
            return offer.get().barriers().get(0).words();
        }
        boolean out = needs.wishes().pins().stream()
                .anyMatch(p -> !p.wanted()
                        && p.drill().equals(drill)
                        && p.phase().filter(phase::equals).isPresent());
        return Saying.phrase(out ? "changed.coach-left-out" : "changed.covered-better");
    }

    private static Saying words(AssignedDose dose) {
        return Saying.phrase("changed.dose-words")
                .with("sets", dose.sets())
                .with("each", dose.each())
                .with("effort", dose.effort());
    }
}
