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
            String why =
                    judgement.reasons().stream().map(Reason::words).findFirst().orElse("its conditions exclude it");
            String condition = judgement.reasons().stream()
                    .map(Reason::condition)
                    .findFirst()
                    .orElse("");
            barriers.add(new Barrier(Barrier.Kind.SAFETY, condition, why));
        }
        if (needs.client().languages().stream().noneMatch(drill::speaks)) {
            String wanted = String.join(" or ", needs.client().languages());
            barriers.add(new Barrier(Barrier.Kind.LANGUAGE, wanted, "it has no text in " + wanted));
        }
        if (needs.reading().hasRestriction("no-end-range")
                && drill.tags().truth("end-range").orElse(false)) {
            barriers.add(new Barrier(Barrier.Kind.RESTRICTION, "no-end-range", "it goes to the end of a range"));
        }
        if (needs.reading().hasRestriction("no-hamstring-lengthening")
                && drill.tags().kinds().contains("hamstring-lengthening")) {
            barriers.add(
                    new Barrier(Barrier.Kind.RESTRICTION, "no-hamstring-lengthening", "it lengthens the hamstrings"));
        }
        if (needs.reading().hasRestriction("no-backward-lean-standing") && leansBackStanding(judgement)) {
            barriers.add(new Barrier(
                    Barrier.Kind.RESTRICTION, "no-backward-lean-standing", "it leans the trunk back in standing"));
        }
        for (String position : drill.positions()) {
            if (needs.client().avoid().contains(position)) {
                barriers.add(
                        new Barrier(Barrier.Kind.POSITION, position, "it is done " + position(position, catalogue)));
            }
        }
        for (String item : missing(drill, catalogue, needs.client().equipment())) {
            barriers.add(new Barrier(Barrier.Kind.EQUIPMENT, item, "it needs a " + item(item, catalogue)));
        }
        needs.wishes().pins().stream()
                .filter(p -> !p.wanted() && p.phase().isEmpty() && p.drill().equals(drill.id()))
                .findFirst()
                .ifPresent(p -> barriers.add(new Barrier(Barrier.Kind.LEFT_OUT, drill.id(), "the coach left it out")));
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

    static String position(String id, Catalogue catalogue) {
        var position = catalogue.words().positions().get(id);
        return position == null ? id : position.name().english();
    }

    static String item(String id, Catalogue catalogue) {
        EquipmentItem item = catalogue.words().equipment().get(id);
        return item == null ? id : item.name().english().toLowerCase(java.util.Locale.ROOT);
    }
}
