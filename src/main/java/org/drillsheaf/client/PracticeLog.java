package org.drillsheaf.client;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the client tells about the practice since the visit before; everything may be left out.
 *
 * @param daysPerWeek days a week on which it was done
 * @param effort 0 to 10
 * @param newPain worst new pain, 0 to 10
 * @param painStays true when new pain lasted over a day, came at night, or came with tingling or weakness
 * @param otherReason true when a bad spell had a reason outside (illness, travel)
 */
public record PracticeLog(
        OptionalDouble daysPerWeek,
        OptionalInt effort,
        OptionalInt newPain,
        Optional<Boolean> painStays,
        Optional<Boolean> otherReason) {

    public static final PracticeLog NOTHING_SAID = new PracticeLog(
            OptionalDouble.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
}
