package org.drillsheaf.drill;

import java.util.Optional;
import org.drillsheaf.LocalText;

/**
 * How the breath goes in a drill.
 *
 * @param pause after the breath out, throat open, at most two seconds
 * @param focus 0 no breath task, 1 breath goes along, 2 the breath is the task
 * @param fullExhale the drill asks for a full breath out
 * @param resist out against a straw or the like
 */
public record Breathing(
        Seconds in,
        Seconds out,
        Seconds pause,
        Airway inBy,
        Airway outBy,
        int focus,
        boolean fullExhale,
        boolean resist,
        Optional<LocalText> cue) {

    /** Nothing is asked of the breath; the seconds are those of a calm breath, for the clock only. */
    public static final Breathing FREE = new Breathing(
            Seconds.of(3),
            Seconds.of(4),
            Seconds.of(0),
            Airway.EITHER,
            Airway.EITHER,
            0,
            false,
            false,
            Optional.empty());

    /** The way of the air. */
    public enum Airway {
        NOSE,
        MOUTH,
        EITHER;

        public static Optional<Airway> of(String id) {
            return java.util.Arrays.stream(values())
                    .filter(a -> a.name().equalsIgnoreCase(id))
                    .findFirst();
        }
    }

    /** Seconds from least to most; both the same when a single number is written. */
    public record Seconds(double least, double most) {
        public Seconds {
            if (!(least >= 0) || !(most >= least) || most > 60) {
                throw new IllegalArgumentException(least + " to " + most + " is no time");
            }
        }

        public static Seconds of(double seconds) {
            return new Seconds(seconds, seconds);
        }

        public double middle() {
            return (least + most) / 2;
        }
    }

    /** Seconds of one usual breath: in, out and pause, each at the middle of its range. */
    public double cycleSeconds() {
        return in.middle() + out.middle() + pause.middle();
    }

    /** Seconds of the longest breath that the text allows. */
    public double longestCycleSeconds() {
        return in.most() + out.most() + pause.most();
    }
}
