package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.build.BuildTask;

/** Turns needs and offers into the builder's plain problem. Immutable after it is made. */
final class TaskMaker {
    private final Needs needs;
    private final Offers offers;
    private final Map<String, Map<Phase, DoseChoice>> doses = new LinkedHashMap<>();

    TaskMaker(Needs needs, Offers offers, BuilderSettings settings) {
        this.needs = needs;
        this.offers = offers;
        for (Offer offer : offers.all()) {
            Map<Phase, DoseChoice> byPhase = new TreeMap<>();
            for (PhaseNeeds phase : needs.ahead()) {
                if (mayStandIn(offer.drill(), phase.phase())) {
                    DoseChoice.of(offer.drill(), phase.phase(), needs, settings, wish(offer.id(), phase.phase()))
                            .ifPresent(d -> byPhase.put(phase.phase(), d));
                }
            }
            doses.put(offer.id(), byPhase);
        }
    }

    Optional<DoseChoice> dose(String drill, Phase phase) {
        Map<Phase, DoseChoice> byPhase = doses.get(drill);
        return byPhase == null ? Optional.empty() : Optional.ofNullable(byPhase.get(phase));
    }

    /** The task with every requirement in force. */
    BuildTask task() {
        return task(Set.of());
    }

    /** @param letGo requirements that are not asked this time */
    BuildTask task(Set<Requirement> letGo) {
        List<BuildTask.Candidate> candidates = new ArrayList<>();
        for (Offer offer : offers.all()) {
            List<Barrier> left = offer.barriers().stream()
                    .filter(b -> letGo.stream().noneMatch(r -> frees(r, b)))
                    .toList();
            // A rung whose equipment is missing still has to be climbed; one that the client may not do is skipped.
            if (left.stream().allMatch(b -> b.kind() == Barrier.Kind.EQUIPMENT)) {
                candidates.add(candidate(offer, left.isEmpty(), letGo));
            }
        }
        Set<String> before = needs.before().map(b -> ids(b.now())).orElse(Set.of());
        boolean carry = letGo.stream().noneMatch(r -> r.kind() == ClashSet.Kind.CARRIED);
        long stillOffered = candidates.stream()
                .filter(c -> before.contains(c.id()) && c.options().containsKey(0))
                .count();
        return new BuildTask(
                needs.ahead().stream().map(p -> phaseTask(p, letGo)).toList(),
                candidates,
                carry ? needs.carriedOver() : 0,
                taught(),
                before,
                carry ? (int) Math.min(needs.carriedOver(), stillOffered) : 0,
                wants(letGo));
    }

    private static boolean frees(Requirement requirement, Barrier barrier) {
        return requirement.subject().equals(barrier.subject())
                && switch (requirement.kind()) {
                    case AVOID -> barrier.kind() == Barrier.Kind.POSITION;
                    case NO_EQUIPMENT -> barrier.kind() == Barrier.Kind.EQUIPMENT;
                    case LEFT_OUT ->
                        barrier.kind() == Barrier.Kind.LEFT_OUT
                                && requirement.phase().isEmpty();
                    case PIN, MINUTES, CARRIED -> false;
                };
    }

    private BuildTask.PhaseTask phaseTask(PhaseNeeds phase, Set<Requirement> letGo) {
        boolean anyLength = letGo.stream().anyMatch(r -> r.kind() == ClashSet.Kind.MINUTES);
        int own = Math.min(needs.client().minutesPerSession(), BuildTask.LONGEST_SESSION);
        int target = Math.min(own, phase.mostMinutes());
        Set<String> kept = needs.before().map(b -> ids(b.phase(phase.phase()))).orElse(Set.of());
        return new BuildTask.PhaseTask(
                phase.phase().title(),
                phase.goals().stream()
                        .filter(GoalNeed::asksForSomething)
                        .map(g -> new BuildTask.GoalTarget(g.goal(), g.weight(), g.target()))
                        .toList(),
                phase.fewestDrills(),
                phase.mostDrills(),
                target,
                anyLength ? BuildTask.LONGEST_SESSION : own,
                phase.effort().exceptions() > 0 ? phase.effort().exceptions() : 0,
                kept);
    }

    private BuildTask.Candidate candidate(Offer offer, boolean open, Set<Requirement> letGo) {
        Drill drill = offer.drill();
        Map<Integer, BuildTask.Option> options = new TreeMap<>();
        if (open) {
            for (PhaseNeeds phase : needs.ahead()) {
                if (leftOut(drill.id(), phase.phase(), letGo)) {
                    continue;
                }
                dose(drill.id(), phase.phase())
                        .ifPresent(d -> options.put(
                                phase.phase().ordinal() - needs.start().ordinal(),
                                new BuildTask.Option(d.fewestMinutes(), d.mostMinutes(), d.strong())));
            }
        }
        boolean pinned = needs.wishes().pins().stream()
                .anyMatch(p -> p.wanted() && p.drill().equals(drill.id()));
        return new BuildTask.Candidate(
                drill.id(),
                drill.family(),
                drill.level(),
                offer.position(),
                new HashSet<>(drill.equipment()),
                drill.goals(),
                new HashSet<>(drill.prerequisites()),
                pinned,
                options);
    }

    private boolean leftOut(String drill, Phase phase, Set<Requirement> letGo) {
        return needs.wishes().pins().stream()
                .filter(p -> !p.wanted() && p.drill().equals(drill) && p.phase().equals(Optional.of(phase)))
                .anyMatch(p -> letGo.stream()
                        .noneMatch(r -> r.kind() == ClashSet.Kind.LEFT_OUT
                                && r.subject().equals(drill)
                                && r.phase().equals(p.phase())));
    }

    private List<BuildTask.Want> wants(Set<Requirement> letGo) {
        List<BuildTask.Want> wants = new ArrayList<>();
        for (Pin pin : needs.wishes().pins()) {
            boolean gone = letGo.stream()
                    .anyMatch(r -> r.kind() == ClashSet.Kind.PIN
                            && r.subject().equals(pin.drill())
                            && r.phase().equals(pin.phase()));
            boolean behind = pin.phase().isPresent() && pin.phase().get().compareTo(needs.start()) < 0;
            if (!pin.wanted() || gone || behind) {
                continue;
            }
            Optional<Phase> phase =
                    pin.kind() == Pin.Kind.KEEP ? Optional.of(pin.phase().orElse(needs.start())) : pin.phase();
            wants.add(new BuildTask.Want(
                    pin.drill(), phase.map(p -> p.ordinal() - needs.start().ordinal())));
        }
        return wants;
    }

    private boolean mayStandIn(Drill drill, Phase phase) {
        return drill.phases().contains(phase)
                && needs.changes().stream()
                        .flatMap(c -> c.notOffered().stream())
                        .noneMatch(n -> n.phases().contains(phase)
                                && drill.strength(n.goal()) > 0
                                && drill.positions().stream().anyMatch(n.positions()::contains));
    }

    private Optional<CoachWishes.DoseWish> wish(String drill, Phase phase) {
        return needs.wishes().doses().stream()
                .filter(w -> w.isFor(drill, phase))
                .findFirst();
    }

    private Set<String> taught() {
        Set<String> taught = new HashSet<>();
        needs.before().ifPresent(b -> {
            taught.addAll(b.known());
            taught.addAll(ids(b.now()));
        });
        return taught;
    }

    private static Set<String> ids(PhasePlan plan) {
        Set<String> ids = new HashSet<>();
        plan.entries().forEach(e -> ids.add(e.drill()));
        return ids;
    }
}
