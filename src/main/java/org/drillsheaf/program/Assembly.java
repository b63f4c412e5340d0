package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.Side;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.Variant;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.program.build.Valuation;
import org.drillsheaf.saying.Saying;

/** Puts the builder's choice together with doses, order, reasons and alternatives. */
final class Assembly {
    private final Catalogue catalogue;
    private final DrillHashes hashes;
    private final PhaseTable table;
    private final BuilderSettings settings;
    private final Needs needs;
    private final Offers offers;
    private final TaskMaker tasks;
    private final BuildTask task;
    private final Reasons reasons;

    Assembly(
            Catalogue catalogue,
            DrillHashes hashes,
            PhaseTable table,
            BuilderSettings settings,
            Needs needs,
            Offers offers,
            TaskMaker tasks,
            BuildTask task) {
        this.catalogue = catalogue;
        this.hashes = hashes;
        this.table = table;
        this.settings = settings;
        this.needs = needs;
        this.offers = offers;
        this.tasks = tasks;
        this.task = task;
        this.reasons = new Reasons(needs, table);
    }

    Program program(Answer answer, Objective objective, Swaps swaps) {
        List<PhasePlan> plans = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            plans.add(phase.compareTo(needs.start()) < 0 ? behind(phase) : plan(phase, answer.drills(), swaps));
        }
        Proof proof = new Proof(
                Cost.of(Valuation.unpacked(answer.value(), objective)),
                Cost.of(Valuation.unpacked(answer.bound(), objective)),
                answer.offered(),
                whole(answer.looked()),
                whole(answer.ruledOut()),
                answer.stopped(),
                answer.tiesSettled());
        TreeSet<String> known = new TreeSet<>(task.taught());
        return new Program(
                needs.client().id(),
                needs.date(),
                needs.start(),
                needs.startReasons(),
                plans,
                proof,
                List.copyOf(known),
                Changes.between(needs, offers, plans),
                remarks(plans));
    }

    private static int whole(long count) {
        return (int) Math.min(Integer.MAX_VALUE, count);
    }

    private PhasePlan behind(Phase phase) {
        boolean done = needs.before()
                .filter(b -> phase.compareTo(b.start()) >= 0 || b.phase(phase).standing() == PhasePlan.Standing.DONE)
                .isPresent();
        return new PhasePlan(
                phase,
                done ? PhasePlan.Standing.DONE : PhasePlan.Standing.NOT_NEEDED,
                List.of(),
                0,
                0,
                List.of(),
                List.of());
    }

    private PhasePlan plan(Phase phase, List<List<String>> drills, Swaps swaps) {
        int number = phase.ordinal() - needs.start().ordinal();
        PhaseNeeds asked = needs.phase(phase);
        List<DoseChoice> doses = drills.get(number).stream()
                .map(id -> tasks.dose(id, phase).orElseThrow())
                .toList();
        List<DoseChoice> ordered = SessionOrder.of(doses, coachOrder(phase), catalogue);
        int[] minutes = MinuteShare.of(ordered, task.phases().get(number).targetMinutes());
        List<BuildTask.Candidate> session = task.candidates().stream()
                .filter(c -> drills.get(number).contains(c.id()))
                .toList();
        Set<String> earlier = number == 0 ? task.before() : Set.copyOf(drills.get(number - 1));
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < ordered.size(); i++) {
            String id = ordered.get(i).drill().id();
            List<Alternative> alternatives = swaps.alternatives(number, id);
            entries.add(entry(ordered.get(i), minutes[i], asked, session, earlier.contains(id), alternatives));
        }
        List<CoveredGoal> goals = asked.goals().stream()
                .map(g -> new CoveredGoal(g, Valuation.covered(g.goal(), session)))
                .toList();
        int sum = entries.stream().mapToInt(Entry::minutes).sum();
        return new PhasePlan(
                phase,
                number == 0 ? PhasePlan.Standing.NOW : PhasePlan.Standing.AHEAD,
                entries,
                sum,
                Math.min(table.row(phase).sessionsPerWeek(), needs.client().sessionsPerWeek()),
                goals,
                remarks(asked, entries, sum));
    }

    private List<String> coachOrder(Phase phase) {
        return needs.wishes().order().stream()
                .filter(o -> o.phase() == phase)
                .map(CoachWishes.Order::drills)
                .findFirst()
                .orElse(List.of());
    }

    private Entry entry(
            DoseChoice dose,
            int minutes,
            PhaseNeeds phase,
            List<BuildTask.Candidate> session,
            boolean familiar,
            List<Alternative> alternatives) {
        Drill drill = dose.drill();
        Offer offer = offers.offer(drill.id()).orElseThrow();
        Drill written = catalogue.drill(drill.id()).orElseThrow();
        List<Served> serves = reasons.serves(drill, phase, session);
        Optional<Pin> pin = needs.wishes().pins().stream()
                .filter(p -> p.wanted()
                        && p.drill().equals(drill.id())
                        && (p.phase().isEmpty() || p.phase().get() == phase.phase()))
                .findFirst();
        return new Entry(
                drill.id(),
                written.edition().revision(),
                hashes.of(drill.id()),
                offer.judgement().variants().stream().map(Variant::id).toList(),
                side(offer),
                dose.of(minutes, needs.reading().age(), settings),
                minutes,
                familiar,
                pin.map(Pin::kind),
                serves,
                reasons.of(serves, phase, familiar, pin),
                alternatives);
    }

    /** The side to lie on comes from the client's safety; else a sided drill begins with the side that the reading names. */
    private Optional<Side> side(Offer offer) {
        if (offer.drill().dose().sides() == Dose.Sides.BOTH_TOGETHER) {
            return Optional.empty();
        }
        // A drill done on the side is written for the right side on top.
        Optional<Side> onTop = offer.judgement().lieOn().map(Side::opposite);
        return onTop.isPresent() ? onTop : Optional.of(needs.side().orElse(Side.RIGHT));
    }

    private List<Saying> remarks(PhaseNeeds phase, List<Entry> entries, int minutes) {
        List<Saying> remarks = new ArrayList<>();
        if (entries.size() < phase.usualDrills()) {
            remarks.add(Saying.phrase("remark.few-drills")
                    .with("count", entries.size())
                    .with("usual", phase.usualDrills()));
        }
        if (minutes < Math.min(phase.usualMinutes(), needs.client().minutesPerSession())) {
            remarks.add(
                    Saying.phrase("remark.few-minutes").with("count", minutes).with("usual", phase.usualMinutes()));
        }
        return remarks;
    }

    private List<Saying> remarks(List<PhasePlan> plans) {
        List<Saying> remarks = new ArrayList<>(needs.remarks());
        Set<String> positions = new TreeSet<>();
        plans.forEach(p -> p.entries()
                .forEach(
                        e -> positions.add(offers.offer(e.drill()).orElseThrow().position())));
        if (positions.size() == 1) {
            remarks.add(Saying.phrase("remark.one-position")
                    .with(
                            "position",
                            Saying.name(
                                    Saying.Name.Kind.POSITION,
                                    positions.iterator().next())));
        }
        for (Pin pin : needs.wishes().pins()) {
            if (pin.wanted() && pin.phase().isPresent() && pin.phase().get().compareTo(needs.start()) < 0) {
                remarks.add(Saying.phrase("remark.pin-behind")
                        .with("phase", pin.phase().get().saidName()));
            }
        }
        return remarks;
    }
}
