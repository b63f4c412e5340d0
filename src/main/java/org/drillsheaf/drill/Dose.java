package org.drillsheaf.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How much of a drill, with the range a coach may choose from.
 *
 * @param noun the drill's own word for one unit (lifts, reaches, breaths): language to plural category to word
 * @param each breaths, repetitions, steps or minutes in one set
 * @param repetitionSeconds seconds of one repetition
 * @param holdSeconds longest steady work without a pause
 * @param effort own scale 0 to 10
 */
public record Dose(
        Count count,
        Map<String, Map<String, String>> noun,
        DoseRange sets,
        DoseRange each,
        double repetitionSeconds,
        DoseRange holdSeconds,
        DoseRange effort,
        Sides sides) {

    /** Seconds of one repetition when the drill does not say. Common practice, no source. */
    public static final double USUAL_REPETITION_SECONDS = 6;

    /** What is counted in a set. */
    public enum Count {
        BREATHS,
        REPETITIONS,
        STEPS,
        MINUTES;

        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Count> of(String id) {
            return Arrays.stream(values()).filter(c -> c.id().equals(id)).findFirst();
        }
    }

    /** Whether the sides of the body take turns. */
    public enum Sides {
        BOTH_TOGETHER(1),
        EACH_SIDE(2),
        ONE_SIDE(1);

        private final int number;

        Sides(int number) {
            this.number = number;
        }

        /** How often a set is done: once, or once a side. */
        public int number() {
            return number;
        }

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        public static Optional<Sides> of(String id) {
            return Arrays.stream(values()).filter(s -> s.id().equals(id)).findFirst();
        }
    }

    public Chosen usual() {
        return new Chosen(sets.usual(), each.usual(), effort.usual(), sides.number());
    }

    public Chosen smallest() {
        return new Chosen(sets.least(), each.least(), effort.least(), sides.number());
    }

    public Chosen largest() {
        return new Chosen(sets.most(), each.most(), effort.most(), sides.number());
    }

    /**
     * One dose out of the range.
     *
     * @param each breaths, repetitions, steps or minutes in one set
     * @param sides 1, or 2 when both sides are done one after the other
     */
    public record Chosen(int sets, int each, int effort, int sides) {}
}
