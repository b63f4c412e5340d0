package org.drillsheaf.program;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;

/**
 * One drill in one phase of a program.
 *
 * @param drill id
 * @param revision of the drill when the program was built
 * @param hash SHA-256 of the drill's file, 64 hexadecimal digits
 * @param variants ids of the written changes that this client gets
 * @param side the side that begins, or the only side; empty for a drill without sides
 * @param minutes whole, with set-up and rests
 * @param familiar carried over from the phase or program before
 * @param pinned the coach's wish that put or kept it here
 * @param serves goals of this phase that the drill serves, strongest first
 * @param reasons why it is here, each one clause
 * @param alternatives next best drills for this place, best first
 */
public record Entry(
        String drill,
        int revision,
        String hash,
        List<String> variants,
        Optional<Side> side,
        AssignedDose dose,
        int minutes,
        boolean familiar,
        Optional<Pin.Kind> pinned,
        List<Served> serves,
        List<Saying> reasons,
        List<Alternative> alternatives) {
    public Entry {
        variants = List.copyOf(variants);
        serves = List.copyOf(serves);
        reasons = List.copyOf(reasons);
        alternatives = List.copyOf(alternatives);
    }

    /** The written changes in one word; empty when the drill is done as written. */
    public Optional<String> variant() {
        return variants.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", variants));
    }
}
