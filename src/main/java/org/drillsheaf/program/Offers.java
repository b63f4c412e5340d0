package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.EquipmentItem;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.drill.safety.Measure;
import org.drillsheaf.drill.safety.Reason;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.saying.Saying;

/** Every drill in use of the catalogue as this client may or may not have it, in the order of ids. Immutable. */
public final class Offers {
    private static final Set<String> STANDING = Set.of("standing", "split-stance", "walking");
    /** House rule; no source. */
    private static final double UPRIGHT_DEGREES = 5;

    private final ClientSafety judgedFor;
    private final List<Offer> all;

    private Offers(ClientSafety judgedFor, List<Offer> all) {
        this.judgedFor = judgedFor;
        this.all = List.copyOf(all);
    }

    public static Offers of(Catalogue catalogue, Safety safety, Needs needs) {
        List<Offer> offers = new ArrayList<>();
        for (Drill drill : catalogue.inUse()) {
            Judgement judgement = safety.judge(drill, needs.safety());
            offers.add(new Offer(judgement, barriers(judgement, catalogue, needs)));
        }
        return new Offers(needs.safety(), offers);
    }

    /** The same drills for other equipment, positions or a reading that bars others, without judging them again. */
    Offers again(Catalogue catalogue, Needs needs) {
        return new Offers(
                judgedFor,
                all.stream()
                        .map(o -> new Offer(o.judgement(), barriers(o.judgement(), catalogue, needs)))
                        .toList());
    }

    /** Whether the drills were judged for a client with just these conditions. */
    public boolean areJudgedFor(ClientSafety safety) {
        return judgedFor.equals(safety);
    }

    public List<Offer> all() {
        return all;
    }

    public Optional<Offer> offer(String drill) {
        return all.stream().filter(o -> o.id().equals(drill)).findFirst();
    }

    private static List<Barrier> barriers(Judgement judgement, Catalogue catalogue, Needs needs) {
        Drill drill = judgement.drill();
        List<Barrier> barriers = new ArrayList<>();
        if (!judgement.isOffered()) {
            Saying why = judgement.reasons().stream()
                    .map(Reason::words)
                    .findFirst()
                    .orElse(Saying.phrase("barrier.conditions"));
            String condition = judgement.reasons().stream()
                    .map(Reason::condition)
                    .findFirst()
                    .orElse("");
            barriers.add(new Barrier(Barrier.Kind.SAFETY, condition, why));
        }
        if (needs.client().languages().stream().noneMatch(drill::speaks)) {
            List<Saying.Name> wanted = needs.client().languages().stream()
                    .map(l -> Saying.name(Saying.Name.Kind.LANGUAGE, l))
                    .toList();
            barriers.add(new Barrier(
                    Barrier.Kind.LANGUAGE,
                    String.join(" ", needs.client().languages()),
                    Saying.phrase("barrier.language").with("languages", Saying.joined(Saying.Joint.OR, wanted))));
        }
        if (needs.reading().hasRestriction("no-end-range")
                && drill.tags().truth("end-range").orElse(false)) {
            barriers.add(new Barrier(Barrier.Kind.RESTRICTION, "no-end-range", Saying.phrase("barrier.end-range")));
        }
        if (needs.reading().hasRestriction("no-hamstring-lengthening")
                && drill.tags().kinds().contains("hamstring-lengthening")) {
            barriers.add(new Barrier(
                    Barrier.Kind.RESTRICTION, "no-hamstring-lengthening", Saying.phrase("barrier.hamstrings")));
        }
        if (needs.reading().hasRestriction("no-backward-lean-standing") && leansBackStanding(judgement)) {
            barriers.add(new Barrier(
                    Barrier.Kind.RESTRICTION, "no-backward-lean-standing", Saying.phrase("barrier.leans-back")));
        }
        for (String position : drill.positions()) {
            if (needs.client().avoid().contains(position)) {
                barriers.add(new Barrier(
                        Barrier.Kind.POSITION,
                        position,
                        Saying.phrase("barrier.position")
                                .with("position", Saying.name(Saying.Name.Kind.POSITION, position))));
            }
        }
        for (String item : missing(drill, catalogue, needs.client().equipment())) {
            barriers.add(new Barrier(
                    Barrier.Kind.EQUIPMENT,
                    item,
                    Saying.phrase("barrier.item").with("item", Saying.name(Saying.Name.Kind.EQUIPMENT, item))));
        }
        needs.wishes().pins().stream()
                .filter(p -> !p.wanted() && p.phase().isEmpty() && p.drill().equals(drill.id()))
                .findFirst()
                .ifPresent(p -> barriers.add(
                        new Barrier(Barrier.Kind.LEFT_OUT, drill.id(), Saying.phrase("changed.coach-left-out"))));
        return barriers;
    }

    /** Arched back by more than the few degrees that a drawn upright spine may have. */
    private static boolean leansBackStanding(Judgement judgement) {
        return judgement.drill().positions().stream().anyMatch(STANDING::contains)
                && judgement.facts().number(Measure.SPINE_BACK).orElse(0) > UPRIGHT_DEGREES;
    }

    private static List<String> missing(Drill drill, Catalogue catalogue, Set<String> atHand) {
        return drill.equipment().stream()
                .filter(id -> {
                    EquipmentItem item = catalogue.words().equipment().get(id);
                    return item == null ? !atHand.contains(id) : !item.isAtHand(atHand);
                })
                .toList();
    }
}
