package org.drillsheaf.drill;

import java.util.List;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * A thing that a drill needs.
 *
 * @param standIns things of a household that may take its place, best first
 */
public record EquipmentItem(String id, LocalText name, LocalText meaning, List<StandIn> standIns, Source source) {

    public EquipmentItem {
        standIns = List.copyOf(standIns);
    }

    /**
     * A thing that may take the place of an item.
     *
     * @param id its own id, which may also be that of another item
     */
    public record StandIn(String id, LocalText name) {}

    /** Whether a client with these things can do a drill that needs this item. */
    public boolean isAtHand(Set<String> things) {
        return things.contains(id) || standInAmong(things).isPresent();
    }

    /** The first stand-in that the client has; empty when the item itself is there or nothing fits. */
    public java.util.Optional<StandIn> standInAmong(Set<String> things) {
        if (things.contains(id)) {
            return java.util.Optional.empty();
        }
        return standIns.stream().filter(s -> things.contains(s.id())).findFirst();
    }
}
