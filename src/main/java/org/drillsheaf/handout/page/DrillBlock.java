package org.drillsheaf.handout.page;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.handout.paint.Picture;

/**
 * Everything that hangs from one thick rule: one drill as this client does it.
 *
 * @param number place in the session, from 1
 * @param language tag of the drill's own texts
 * @param machineTranslated whether a machine wrote these texts and nobody has gone through them
 * @param purpose one clause
 * @param groups set-up and action, a group for each picture, in order
 * @param small the picture for the order strip and the reminder card, without number keys
 * @param stop further stop rules of this drill
 */
public record DrillBlock(
        int number,
        String id,
        String name,
        String language,
        boolean machineTranslated,
        String purpose,
        Dose dose,
        List<Group> groups,
        Arrangement arrangement,
        Figure small,
        Optional<Breath> breath,
        Optional<String> breathCue,
        List<String> feel,
        List<String> notFeel,
        List<Fault> faults,
        List<String> stop,
        int revision,
        boolean houseVersion,
        YearMonth checked,
        Optional<Integer> statureCm) {

    /** How the pictures stand. */
    public enum Arrangement {
        SIDE_BY_SIDE,
        STACKED
    }

    /**
     * A picture with the words that stand for it.
     *
     * @param alternative what somebody who cannot see it has to know
     * @param floorMm how far above the lower edge the floor line lies
     */
    public record Figure(Picture picture, double floorMm, String alternative) {}

    /**
     * What is done in one picture.
     *
     * @param keyframe {@code start}, {@code move} or {@code end}
     * @param steps running numbers go on from group to group
     */
    public record Group(String keyframe, Figure figure, List<Step> steps) {
        public Group {
            steps = List.copyOf(steps);
        }
    }

    /** @param number running number in the drill, from 1 */
    public record Step(int number, Wording text) {}

    /**
     * How much.
     *
     * @param noun the drill's own word in the form that the number asks for: breaths, lifts
     * @param count {@code breaths}, {@code repetitions}, {@code steps} or {@code minutes}
     * @param sides {@code both-together}, {@code each-side} or {@code one-side}
     * @param side the side that begins, or the only side
     * @param restSeconds between rounds
     * @param effortFrom lower end of the wanted effort, 0 to 10
     * @param effortTo upper end
     * @param minutes whole minutes of the drill
     */
    public record Dose(
            int sets,
            int each,
            String noun,
            String count,
            String sides,
            Optional<Side> side,
            int restSeconds,
            int effortFrom,
            int effortTo,
            int minutes) {}

    /**
     * The line of the breath.
     *
     * @param inSeconds shown as length and number
     * @param outSeconds from, and {@code outMostSeconds} to, when the coach left a range
     * @param pauseSeconds 0 for none
     * @param inBy {@code nose}, {@code mouth} or {@code either}
     * @param outBy likewise
     * @param asLongAsEasy no number for the breath out: the client's own is shorter than the drill's
     */
    public record Breath(
            int inSeconds,
            int outSeconds,
            int outMostSeconds,
            int pauseSeconds,
            String inBy,
            String outBy,
            boolean asLongAsEasy) {}

    /** A common fault and what mends it. */
    public record Fault(String fault, String fix) {}

    public DrillBlock {
        groups = List.copyOf(groups);
        feel = List.copyOf(feel);
        notFeel = List.copyOf(notFeel);
        faults = List.copyOf(faults);
        stop = List.copyOf(stop);
    }
}
