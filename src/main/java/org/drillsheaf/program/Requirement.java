package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/**
 * Something the client or the coach asks for that could be let go.
 *
 * @param subject position, item or drill id; empty for the others
 * @param phase for a pin
 * @param who for example {@code You pinned}
 * @param what for example {@code Tail roll in Restore}
 * @param remedy for example {@code Let go of the pin}
 */
record Requirement(ClashSet.Kind kind, String subject, Optional<Phase> phase, Saying who, Saying what, Saying remedy) {

    ClashSet.LetGo letGo() {
        return new ClashSet.LetGo(kind, subject, phase);
    }

    /** Every requirement of these needs, in a fixed order. */
    static List<Requirement> of(Needs needs, Offers offers) {
        List<Requirement> all = new ArrayList<>();
        for (Pin pin : needs.wishes().pins()) {
            all.add(pin(pin));
        }
        for (String position : new TreeSet<>(needs.client().avoid())) {
            all.add(new Requirement(
                    ClashSet.Kind.AVOID,
                    position,
                    Optional.empty(),
                    Saying.phrase("asks.avoids"),
                    Saying.name(Saying.Name.Kind.POSITION, position),
                    Saying.phrase("remedy.allow-position")
                            .with("position", Saying.name(Saying.Name.Kind.POSITION, position))));
        }
        TreeSet<String> missing = new TreeSet<>();
        offers.all().stream()
                .flatMap(o -> o.barriers().stream())
                .filter(b -> b.kind() == Barrier.Kind.EQUIPMENT)
                .forEach(b -> missing.add(b.subject()));
        for (String item : missing) {
            all.add(new Requirement(
                    ClashSet.Kind.NO_EQUIPMENT,
                    item,
                    Optional.empty(),
                    Saying.phrase("asks.owns"),
                    Saying.phrase("asks.no-item").with("item", Saying.name(Saying.Name.Kind.EQUIPMENT, item)),
                    Saying.phrase("remedy.get-item").with("item", Saying.name(Saying.Name.Kind.EQUIPMENT, item))));
        }
        int minutes = needs.client().minutesPerSession();
        all.add(new Requirement(
                ClashSet.Kind.MINUTES,
                "",
                Optional.empty(),
                Saying.phrase("asks.has"),
                Saying.phrase("asks.minutes").with("count", minutes),
                Saying.phrase("remedy.minutes")));
        if (needs.carriedOver() > 0) {
            all.add(new Requirement(
                    ClashSet.Kind.CARRIED,
                    "",
                    Optional.empty(),
                    Saying.phrase("asks.house"),
                    Saying.phrase("asks.carried").with("count", needs.carriedOver()),
                    Saying.phrase("remedy.carried")));
        }
        return List.copyOf(all);
    }

    static Requirement pin(Pin pin) {
        Saying drill = Saying.name(Saying.Name.Kind.DRILL, pin.drill());
        Saying what = pin.phase()
                .<Saying>map(
                        p -> Saying.phrase("asks.drill-in").with("drill", drill).with("phase", p.saidName()))
                .orElse(drill);
        return pin.wanted()
                ? new Requirement(
                        ClashSet.Kind.PIN,
                        pin.drill(),
                        pin.phase(),
                        Saying.phrase(pin.kind() == Pin.Kind.KEEP ? "asks.keep" : "asks.pinned"),
                        what,
                        Saying.phrase("remedy.pin"))
                : new Requirement(
                        ClashSet.Kind.LEFT_OUT,
                        pin.drill(),
                        pin.phase(),
                        Saying.phrase("asks.left-out"),
                        what,
                        Saying.phrase("remedy.left-out"));
    }
}
