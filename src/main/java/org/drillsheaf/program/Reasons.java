package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.Valuation;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;

/** Why a drill stands where it stands, in clauses for the coach. */
final class Reasons {
    private final Needs needs;
    private final PhaseTable table;

    Reasons(Needs needs, PhaseTable table) {
        this.needs = needs;
        this.table = table;
    }

    /** Goals that the drill serves in the phase: what would be missing most without it first. */
    List<Served> serves(Drill drill, PhaseNeeds phase, List<BuildTask.Candidate> session) {
        List<BuildTask.Candidate> others =
                session.stream().filter(c -> !c.id().equals(drill.id())).toList();
        List<Served> served = new ArrayList<>();
        for (GoalNeed need : phase.goals()) {
            int strength = drill.strength(need.goal());
            if (strength > 0 && need.weight() > 0) {
                int with = Math.min(need.target(), Valuation.covered(need.goal(), session));
                int without = Math.min(need.target(), Valuation.covered(need.goal(), others));
                served.add(new Served(need.goal(), strength, with - without));
            }
        }
        served.sort(Comparator.<Served>comparingInt(s -> -s.adds() * weight(phase, s.goal()))
                .thenComparingInt(s -> -s.strength())
                .thenComparing(Served::goal));
        return served;
    }

    private static int weight(PhaseNeeds phase, String goal) {
        return phase.goals().stream()
                .filter(g -> g.goal().equals(goal))
                .mapToInt(GoalNeed::weight)
                .findFirst()
                .orElse(0);
    }

    List<Saying> of(List<Served> serves, PhaseNeeds phase, boolean familiar, Optional<Pin> pin) {
        List<Saying> reasons = new ArrayList<>();
        pin.ifPresent(p -> reasons.add(
                withReason(Saying.phrase(p.kind() == Pin.Kind.KEEP ? "why.kept" : "why.pinned"), p.reason())));
        for (Served served : serves) {
            if (served.adds() > 0) {
                reasons.add(new GoalReason(served.goal(), served.strength(), because(served.goal(), phase)).saying());
            }
        }
        if (familiar) {
            reasons.add(Saying.phrase("why.known").with("count", needs.carriedOver()));
        }
        if (reasons.isEmpty()) {
            reasons.add(
                    serves.isEmpty()
                            ? Saying.phrase("why.fills")
                            : Saying.phrase("why.fills-and-adds")
                                    .with("goal", goal(serves.get(0).goal()))
                                    .with("strength", serves.get(0).strength()));
        }
        return reasons;
    }

    /** The findings that speak about the goal, or the phase that asks for it. */
    private Saying because(String goal, PhaseNeeds phase) {
        List<Saying> findings = new ArrayList<>();
        for (String test : table.measuredBy().getOrDefault(goal, List.of())) {
            for (Finding finding : needs.reading().findings()) {
                if (finding.test().id().equals(test) && finding.kind() == FindingKind.LIMITED) {
                    findings.add(Saying.phrase(finding.values().isEmpty() ? "why.limited" : "why.value-limited")
                            .with("test", finding.place())
                            .with("value", finding.values()));
                }
            }
        }
        return findings.isEmpty()
                ? Saying.phrase("why.phase-asks")
                        .with("phase", phase.phase().saidName())
                        .with("weight", weight(phase, goal))
                : Saying.joined(Saying.Joint.AND, findings.subList(0, Math.min(2, findings.size())));
    }

    private static Saying goal(String id) {
        return Saying.name(Saying.Name.Kind.GOAL, id);
    }

    /** A clause with a person's own reason behind it, where there is one. */
    static Saying withReason(Saying clause, String reason) {
        return reason.isEmpty()
                ? clause
                : Saying.phrase("with-reason").with("clause", clause).with("reason", Saying.written(reason));
    }
}
