package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.Evidence;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.NextStep;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;

/** Turns a reading, a client and the coach's wishes into what the builder gets. Immutable and safe for several threads. */
public final class NeedsMaker {
    private static final int HIGHEST_WEIGHT = 5;
    private static final int HIGHEST_EFFORT = 10;

    /** Restrictions that no measure of a drill answers; the coach is reminded of them. */
    private static final Set<String> BY_EYE = Set.of("own-range-85", "heels-loaded-standing", "slow-returns");

    private final PhaseTable table;
    private final BuilderSettings settings;

    public NeedsMaker(PhaseTable table, BuilderSettings settings) {
        this.table = table;
        this.settings = settings;
    }

    /**
     * Needs for a first program.
     *
     * @param gates the gates between the phases for this client; a gate that is missing counts as not met
     */
    public Needs first(
            Client client, Reading reading, ClientSafety safety, CoachWishes wishes, List<GateResult> gates) {
        StartPhase start = StartPhase.first(reading, gates, table, wishes);
        return make(client, reading, safety, wishes, start, Optional.empty());
    }

    /** Needs for the program after a re-screen. */
    public Needs after(
            Program before, NextStep step, Client client, Reading reading, ClientSafety safety, CoachWishes wishes) {
        StartPhase start = StartPhase.after(before.start(), step, wishes);
        return make(client, reading, safety, wishes, start, Optional.of(before));
    }

    /** The phase to work on after a re-screen. */
    public Phase phaseAfter(Phase before, NextStep step, CoachWishes wishes) {
        return StartPhase.after(before, step, wishes).phase();
    }

    private Needs make(
            Client client,
            Reading reading,
            ClientSafety safety,
            CoachWishes wishes,
            StartPhase start,
            Optional<Program> before) {
        List<Trigger> triggers = triggers(reading);
        List<Saying> remarks = new ArrayList<>(safety.remarks());
        reading.restrictions().stream()
                .filter(r -> BY_EYE.contains(r.id()))
                .forEach(r -> remarks.add(Saying.phrase("remark.look-yourself").with("rule", r.words())));
        List<PhaseNeeds> phases = new ArrayList<>();
        int cap = triggers.stream()
                .flatMapToInt(t -> t.change.effortLimit().stream())
                .min()
                .orElse(HIGHEST_EFFORT);
        for (PhaseRow row : table.rows()) {
            List<GoalNeed> goals = new ArrayList<>();
            row.goals()
                    .forEach((goal, asked) ->
                            goals.add(goalNeed(goal, row, client, reading, safety, wishes, triggers, remarks)));
            phases.add(new PhaseNeeds(
                    row.phase(),
                    goals,
                    row.fewestDrills(),
                    row.usualDrills(),
                    row.mostDrills(),
                    row.usualMinutes(),
                    row.mostMinutes(),
                    row.effort().cappedAt(cap)));
        }
        return new Needs(
                client,
                reading.date(),
                reading,
                start.phase(),
                start.reasons(),
                phases,
                side(reading),
                triggers.stream().map(Trigger::change).toList(),
                cap,
                safety,
                wishes,
                settings.carriedOver(),
                before,
                remarks.stream().distinct().toList());
    }

    /** A change with what brought it. */
    private record Trigger(ReadingChange change, Saying because) {}

    private List<Trigger> triggers(Reading reading) {
        List<Trigger> triggers = new ArrayList<>();
        for (ReadingChange change : table.changes()) {
            because(change, reading).ifPresent(because -> triggers.add(new Trigger(change, because)));
        }
        return triggers;
    }

    private static Optional<Saying> because(ReadingChange change, Reading reading) {
        for (PresentationReading name : reading.presentations()) {
            boolean counts = reading.supported().contains(name) || name.leaning();
            if (counts && change.when().contains(name.id())) {
                List<Saying> findings = name.evidence().stream()
                        .filter(e -> e.kind() == Evidence.Kind.FOR && e.role() == Evidence.Role.REQUIRED)
                        .map(Evidence::words)
                        .limit(3)
                        .toList();
                Saying held =
                        Saying.phrase("goal.held").with("name", name.name()).with("verdict", name.verdictWords());
                return Optional.of(
                        findings.isEmpty()
                                ? held
                                : Saying.phrase("values.behind")
                                        .with("words", held)
                                        .with("values", Saying.joined(Saying.Joint.SEMICOLON, findings)));
            }
        }
        return change.when().contains("joint-laxity") && reading.lax()
                ? Optional.of(Saying.phrase("restriction.lax"))
                : Optional.empty();
    }

    private static GoalNeed goalNeed(
            String goal,
            PhaseRow row,
            Client client,
            Reading reading,
            ClientSafety safety,
            CoachWishes wishes,
            List<Trigger> triggers,
            List<Saying> remarks) {
        Phase phase = row.phase();
        Weighing weighing =
                new Weighing(java.util.Objects.requireNonNull(row.goals().get(goal)), phase);
        for (Trigger trigger : triggers) {
            weighing.change(trigger.change, trigger.because, goal, phase, wishOf(client, reading));
        }
        wishes.weights().stream()
                .filter(w -> w.phase() == phase && w.goal().equals(goal))
                .forEach(weighing::set);
        String barredBy = safety.barredGoals().get(goal);
        if (barredBy != null) {
            Saying name = Saying.name(Saying.Name.Kind.CONDITION, barredBy);
            if (weighing.weight > 0) {
                remarks.add(Saying.phrase("remark.goal-left-out")
                        .with("condition", name)
                        .with("goal", Saying.name(Saying.Name.Kind.GOAL, goal)));
            }
            return new GoalNeed(
                    goal, 0, 0, List.of(Saying.phrase("goal.left-out").with("condition", name)));
        }
        return new GoalNeed(goal, weighing.weight, weighing.target, weighing.reasons);
    }

    /** The client's own wish, or what a local finding puts in its place. */
    private static Optional<String> wishOf(Client client, Reading reading) {
        return client.wish().or(() -> reading.layers().local().stream()
                .flatMap(l -> l.goal().stream())
                .findFirst());
    }

    private static Optional<Side> side(Reading reading) {
        return reading.supported().stream()
                .flatMap(p -> p.side().stream())
                .findFirst()
                .or(() -> reading.layers().underneath());
    }

    /** One goal's numbers while they change, each change with its reason. */
    private static final class Weighing {
        private int weight;
        private int target;
        private final List<Saying> reasons = new ArrayList<>();

        Weighing(PhaseRow.Asked asked, Phase phase) {
            weight = asked.weight();
            target = asked.target();
            reasons.add(numbers("goal.phase").with("phase", phase.saidName()));
        }

        void change(ReadingChange change, Saying because, String goal, Phase phase, Optional<String> wish) {
            if (change.level().isPresent() && weight > 0) {
                weight = change.level().getAsInt();
                reasons.add(numbers("goal.alike").with("because", because));
            }
            if (change.wishBy().isPresent() && wish.filter(goal::equals).isPresent() && weight > 0) {
                add(change.wishBy().getAsInt(), Saying.phrase("goal.wish"));
            }
            for (ReadingChange.Add add : change.add()) {
                if (add.goal().equals(goal) && add.phases().contains(phase)) {
                    add(
                            add.by(),
                            Saying.phrase("goal.change")
                                    .with("change", Saying.own(change.words()))
                                    .with("because", because));
                }
            }
        }

        private void add(int by, Saying because) {
            int changed = Math.max(0, Math.min(HIGHEST_WEIGHT, weight + by));
            if (by > 0) {
                target = Math.max(target, by >= 2 ? 2 : 1);
            }
            if (changed != weight || by > 0) {
                weight = changed;
                reasons.add(numbers(by > 0 ? "goal.plus" : "goal.minus")
                        .with("by", Math.abs(by))
                        .with("because", because));
            }
            weight = changed;
        }

        private Saying.Phrase numbers(String key) {
            return Saying.phrase(key).with("weight", weight).with("target", target);
        }

        void set(CoachWishes.Weight wish) {
            int raised = wish.weight() - weight;
            weight = wish.weight();
            if (raised > 0) {
                target = Math.max(target, raised >= 2 ? 2 : 1);
            }
            target = wish.target().orElse(target);
            reasons.add(Reasons.withReason(numbers("goal.coach"), wish.reason()));
        }
    }
}
