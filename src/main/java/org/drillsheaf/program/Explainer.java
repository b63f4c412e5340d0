package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.client.Client;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Valuation;
import org.drillsheaf.saying.Saying;

/** Answers a coach's questions about one program, each by solving the question exactly. Immutable. */
public final class Explainer {
    private final Catalogue catalogue;
    private final BuilderSettings settings;
    private final ExactBuilder exact;
    private final Needs needs;
    private final Offers offers;
    private final Program program;
    private final TaskMaker tasks;

    Explainer(
            Catalogue catalogue,
            BuilderSettings settings,
            ExactBuilder exact,
            Needs needs,
            Offers offers,
            Program program) {
        this.catalogue = catalogue;
        this.settings = settings;
        this.exact = exact;
        this.needs = needs;
        this.offers = offers;
        this.program = program;
        this.tasks = new TaskMaker(needs, offers, settings);
    }

    /** Why the drill is not in the program, and what it would cost to have it in. */
    public WhyNot whyNot(String drill) {
        Optional<Drill> known = catalogue.drill(drill);
        Optional<Offer> offer = offers.offer(drill);
        if (known.isEmpty() || offer.isEmpty()) {
            return new WhyNot(
                    drill,
                    List.of(Saying.phrase(known.isEmpty() ? "why-not.no-such-drill" : "why-not.not-in-use")),
                    List.of());
        }
        if (!offer.get().isOpen()) {
            return new WhyNot(
                    drill, offer.get().barriers().stream().map(Barrier::words).toList(), List.of());
        }
        if (isIn(drill)) {
            return new WhyNot(drill, List.of(), List.of());
        }
        List<WhyNot.InPhase> phases = new ArrayList<>();
        for (PhaseNeeds phase : needs.ahead()) {
            if (tasks.dose(drill, phase.phase()).isPresent()) {
                phases.add(with(drill, phase.phase()));
            }
        }
        List<Saying> reasons = phases.isEmpty() ? List.of(Saying.phrase("why-not.no-phase")) : List.of();
        return new WhyNot(drill, reasons, phases);
    }

    /** What the program would lose without the drill, anywhere. */
    public Without without(String drill) {
        BuildTask task = tasks.task();
        return new Without(difference(new BuildTask(
                task.phases(),
                task.candidates().stream()
                        .map(c -> c.id().equals(drill) ? c.notOffered() : c)
                        .toList(),
                task.carried(),
                task.taught(),
                task.before(),
                task.carriedBefore(),
                task.wants().stream().filter(w -> !w.drill().equals(drill)).toList())));
    }

    /** Whether the drill stands in a phase ahead. */
    public boolean isIn(String drill) {
        return needs.ahead().stream()
                .anyMatch(p -> program.entry(p.phase(), drill).isPresent());
    }

    private WhyNot.InPhase with(String drill, Phase phase) {
        BuildTask task = tasks.task();
        List<BuildTask.Want> wants = new ArrayList<>(task.wants());
        wants.add(new BuildTask.Want(
                drill, Optional.of(phase.ordinal() - needs.start().ordinal())));
        return new WhyNot.InPhase(
                phase,
                difference(new BuildTask(
                        task.phases(),
                        task.candidates(),
                        task.carried(),
                        task.taught(),
                        task.before(),
                        task.carriedBefore(),
                        wants)));
    }

    /** What more minutes a session would gain. */
    public WhatIf moreMinutes(int minutes) {
        Client client = needs.client();
        Needs more = needs.withClient(client.with(client.equipment(), client.minutesPerSession() + minutes));
        return new WhatIf(
                Saying.phrase("what-if.minutes").with("count", minutes),
                difference(new TaskMaker(more, offers, settings).task()));
    }

    /** What one more piece of equipment would gain. */
    public WhatIf with(String item) {
        Set<String> more = new HashSet<>(needs.client().equipment());
        more.add(item);
        Needs changed =
                needs.withClient(needs.client().with(more, needs.client().minutesPerSession()));
        Offers again = offers.again(catalogue, changed);
        return new WhatIf(
                Saying.phrase("what-if.item").with("item", Saying.name(Saying.Name.Kind.EQUIPMENT, item)),
                difference(new TaskMaker(changed, again, settings).task()));
    }

    /** What each piece of equipment that the client lacks would gain, the largest gain first. */
    public List<WhatIf> moreEquipment() {
        Set<String> missing = new TreeSet<>();
        offers.all().stream()
                .flatMap(o -> o.barriers().stream())
                .filter(b -> b.kind() == Barrier.Kind.EQUIPMENT)
                .forEach(b -> missing.add(b.subject()));
        return missing.stream().map(this::with).sorted(WhatIf.BEST_FIRST).toList();
    }

    private Difference difference(BuildTask task) {
        Answer answer = exact.value(task);
        Optional<Cost> cost = answer.found()
                ? Optional.of(Cost.of(Valuation.unpacked(answer.value(), exact.objective()))
                        .minus(program.proof().value()))
                : Optional.empty();
        boolean decided = answer.kind() == Answer.Kind.BEST || answer.kind() == Answer.Kind.NOTHING_FITS;
        return new Difference(cost, decided, program.proof().best());
    }
}
