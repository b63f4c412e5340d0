package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;

/**
 * The hard rules of a first program, read from the client, the drills and the phases themselves. Knows nothing of the builder's
 * task, doses or checks, so that a rule they all forget is still missed here.
 */
final class HardRules {
    private final Needs needs;
    private final Offers offers;
    private final Catalogue catalogue;
    private final List<List<String>> drills;
    private final List<String> broken = new ArrayList<>();

    private HardRules(Needs needs, Offers offers, Catalogue catalogue, List<List<String>> drills) {
        this.needs = needs;
        this.offers = offers;
        this.catalogue = catalogue;
        this.drills = drills;
    }

    /** @param drills ids by phase, from the first one ahead */
    static List<String> broken(Needs needs, Offers offers, Catalogue catalogue, List<List<String>> drills) {
        HardRules rules = new HardRules(needs, offers, catalogue, drills);
        Set<String> earlier = new HashSet<>();
        for (int p = 0; p < drills.size(); p++) {
            rules.session(needs.ahead().get(p), drills.get(p));
            for (String id : drills.get(p)) {
                rules.client(id);
                rules.ladder(id, earlier);
            }
            if (p > 0) {
                Set<String> shared = new HashSet<>(drills.get(p));
                shared.retainAll(drills.get(p - 1));
                rules.check(shared.size() >= 2, "too few known drills in phase " + p);
            }
            earlier.addAll(drills.get(p));
        }
        rules.pins();
        return rules.broken;
    }

    private void check(boolean holds, String what) {
        if (!holds) {
            broken.add(what);
        }
    }

    private Drill drill(String id) {
        return offers.offer(id).orElseThrow().drill();
    }

    private void session(PhaseNeeds phase, List<String> ids) {
        check(ids.size() >= 3 && ids.size() <= phase.mostDrills(), ids.size() + " drills in " + phase.phase());
        check(ids.stream().map(id -> drill(id).family()).distinct().count() == ids.size(), "a family twice");
        int minutes = 0;
        int strong = 0;
        for (String id : ids) {
            Drill drill = drill(id);
            Dose dose = drill.dose();
            check(drill.phases().contains(phase.phase()), id + " is no drill for " + phase.phase());
            minutes += drill.minutes(new Dose.Chosen(
                    dose.sets().least(),
                    dose.each().least(),
                    dose.effort().least(),
                    dose.sides().number()));
            check(dose.effort().least() <= needs.effortCap(), id + " is too hard");
            strong += dose.effort().least() > phase.effort().limit() ? 1 : 0;
        }
        check(minutes <= needs.client().minutesPerSession(), minutes + " minutes at least");
        check(wished(ids) || strong <= phase.effort().exceptions(), strong + " drills above the effort of the phase");
    }

    /** A dose that the coach asked for may go above the phase. */
    private boolean wished(List<String> ids) {
        return needs.wishes().doses().stream().anyMatch(d -> ids.contains(d.drill()));
    }

    private void client(String id) {
        Drill drill = drill(id);
        check(offers.offer(id).orElseThrow().judgement().isOffered(), id + " is not safe");
        check(
                drill.positions().stream().noneMatch(needs.client().avoid()::contains),
                id + " is in an avoided position");
        for (String item : drill.equipment()) {
            boolean atHand = Optional.ofNullable(catalogue.words().equipment().get(item))
                    .map(e -> e.isAtHand(needs.client().equipment()))
                    .orElse(needs.client().equipment().contains(item));
            check(atHand, id + " needs a " + item);
        }
    }

    private void ladder(String id, Set<String> earlier) {
        Drill drill = drill(id);
        check(earlier.containsAll(drill.prerequisites()), id + " comes before what it needs");
        boolean pinned = needs.wishes().pins().stream()
                .anyMatch(p -> p.wanted() && p.drill().equals(id));
        int rung = catalogue.inUse().stream()
                .filter(d -> d.family().equals(drill.family()) && d.level() < drill.level())
                .filter(d -> allowed(d.id()))
                .mapToInt(Drill::level)
                .max()
                .orElse(1);
        boolean climbed = earlier.stream()
                .map(this::drill)
                .anyMatch(d -> d.family().equals(drill.family()) && d.level() >= rung && d.level() <= drill.level());
        check(drill.level() <= 2 || pinned || climbed, id + " comes before the rung below it");
        for (String before : earlier) {
            boolean higher = drill(before).family().equals(drill.family())
                    && drill(before).level() > drill.level();
            check(!higher, id + " steps down from " + before);
        }
    }

    /** A rung that only lacks equipment still has to be climbed. */
    private boolean allowed(String id) {
        return offers.offer(id)
                .filter(o -> o.barriers().stream().allMatch(b -> b.kind() == Barrier.Kind.EQUIPMENT))
                .isPresent();
    }

    private void pins() {
        for (Pin pin : needs.wishes().pins()) {
            Optional<Phase> phase = pin.phase();
            for (int p = 0; p < drills.size(); p++) {
                boolean here =
                        phase.isEmpty() || phase.get() == needs.ahead().get(p).phase();
                check(pin.wanted() || !here || !drills.get(p).contains(pin.drill()), pin.drill() + " was left out");
            }
            check(
                    !pin.wanted() || drills.stream().anyMatch(d -> d.contains(pin.drill())),
                    pin.drill() + " was pinned and is not in");
        }
    }
}
