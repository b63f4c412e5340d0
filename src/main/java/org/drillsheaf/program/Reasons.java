package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Goal;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.Valuation;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;

/** Why a drill stands where it stands, in clauses for the coach. */
final class Reasons {
    private final Needs needs;
    private final PhaseTable table;
    private final Catalogue catalogue;

    Reasons(Needs needs, PhaseTable table, Catalogue catalogue) {
        this.needs = needs;
        this.table = table;
        this.catalogue = catalogue;
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

    List<String> of(List<Served> serves, PhaseNeeds phase, boolean familiar, Optional<Pin> pin) {
        List<String> reasons = new ArrayList<>();
        pin.ifPresent(p -> reasons.add((p.kind() == Pin.Kind.KEEP ? "the coach keeps it" : "the coach pinned it")
                + (p.reason().isEmpty() ? "" : ": " + p.reason())));
        for (Served served : serves) {
            if (served.adds() > 0) {
                reasons.add(goal(served.goal()) + ", strength " + served.strength() + " of 3: "
                        + because(served.goal(), phase));
            }
        }
        if (familiar) {
            reasons.add("known from before; " + needs.carriedOver() + " known drills are carried over");
        }
        if (reasons.isEmpty()) {
            String more = serves.isEmpty()
                    ? ""
                    : " and adds to " + lower(goal(serves.get(0).goal())) + " (strength "
                            + serves.get(0).strength() + " of 3), which the others cover too";
            reasons.add("it fills the minutes of the session" + more);
        }
        return reasons;
    }

    /** The findings that speak about the goal, or the phase that asks for it. */
    private String because(String goal, PhaseNeeds phase) {
        List<String> findings = new ArrayList<>();
        for (String test : table.measuredBy().getOrDefault(goal, List.of())) {
            for (Finding finding : needs.reading().findings()) {
                if (finding.test().id().equals(test) && finding.kind() == FindingKind.LIMITED) {
                    String side = finding.side().map(s -> ", " + s.id()).orElse("");
                    String value = finding.values().isEmpty() ? "" : " " + finding.values();
                    findings.add(finding.test().name() + side + value + " is limited");
                }
            }
        }
        return findings.isEmpty()
                ? phase.phase().title() + " asks for it with weight " + weight(phase, goal)
                : String.join(" and ", findings.subList(0, Math.min(2, findings.size())));
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + name.substring(1);
    }

    private String goal(String id) {
        Goal goal = catalogue.words().goals().get(id);
        return goal == null ? id : goal.name().english();
    }
}
