package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;

/**
 * Something the client or the coach asks for that could be let go.
 *
 * @param subject position, item or drill id; empty for the others
 * @param phase for a pin
 * @param who for example {@code You pinned}
 * @param what for example {@code Tail roll in Restore}
 * @param remedy for example {@code Let go of the pin}
 */
record Requirement(ClashSet.Kind kind, String subject, Optional<Phase> phase, String who, String what, String remedy) {

    ClashSet.LetGo letGo() {
        return new ClashSet.LetGo(kind, subject, phase);
    }

    /** Every requirement of these needs, in a fixed order. */
    static List<Requirement> of(Needs needs, Offers offers, Catalogue catalogue) {
        List<Requirement> all = new ArrayList<>();
        for (Pin pin : needs.wishes().pins()) {
            all.add(pin(pin, catalogue));
        }
        for (String position : new TreeSet<>(needs.client().avoid())) {
            all.add(new Requirement(
                    ClashSet.Kind.AVOID,
                    position,
                    Optional.empty(),
                    "The client avoids",
                    Offers.position(position, catalogue),
                    "Allow " + Offers.position(position, catalogue) + " again"));
        }
        TreeSet<String> missing = new TreeSet<>();
        offers.all().stream()
                .flatMap(o -> o.barriers().stream())
                .filter(b -> b.kind() == Barrier.Kind.EQUIPMENT)
                .forEach(b -> missing.add(b.subject()));
        for (String item : missing) {
            String name = Offers.item(item, catalogue);
            all.add(new Requirement(
                    ClashSet.Kind.NO_EQUIPMENT,
                    item,
                    Optional.empty(),
                    "The client owns",
                    "no " + name,
                    "Get a " + name));
        }
        int minutes = needs.client().minutesPerSession();
        all.add(new Requirement(
                ClashSet.Kind.MINUTES,
                "",
                Optional.empty(),
                "The client has",
                minutes + " minutes a session",
                "Give a session more minutes"));
        if (needs.carriedOver() > 0) {
            all.add(new Requirement(
                    ClashSet.Kind.CARRIED,
                    "",
                    Optional.empty(),
                    "The house asks for",
                    needs.carriedOver() + " known drills carried over",
                    "Carry over fewer known drills"));
        }
        return List.copyOf(all);
    }

    static Requirement pin(Pin pin, Catalogue catalogue) {
        String name = catalogue
                .drill(pin.drill())
                .map(Drill::name)
                .map(n -> n.english())
                .orElse(pin.drill());
        String where = pin.phase().map(p -> " in " + p.title()).orElse("");
        return pin.wanted()
                ? new Requirement(
                        ClashSet.Kind.PIN,
                        pin.drill(),
                        pin.phase(),
                        pin.kind() == Pin.Kind.KEEP ? "You keep" : "You pinned",
                        name + where,
                        "Let go of the pin")
                : new Requirement(
                        ClashSet.Kind.LEFT_OUT,
                        pin.drill(),
                        pin.phase(),
                        "You left out",
                        name + where,
                        "Allow it again");
    }
}
