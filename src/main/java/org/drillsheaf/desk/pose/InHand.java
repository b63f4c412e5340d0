package org.drillsheaf.desk.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Side;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.pose.Pose;
import org.drillsheaf.figure.pose.PoseFrame;

/**
 * Joints that are being turned and not written yet. Immutable.
 *
 * @param angles every angle of the pose, degrees, with what is turned
 * @param turns what was turned since it was taken in hand, in the order it was
 */
record InHand(JointAngles angles, List<Turn> turns) {
    /** @param side empty for both and for the middle */
    record Turn(Motion motion, Optional<Side> side) {}

    InHand {
        turns = List.copyOf(turns);
    }

    /** Takes more in hand. */
    static InHand of(Optional<InHand> before, JointAngles angles, List<Turn> turned) {
        List<Turn> all = new ArrayList<>(before.map(InHand::turns).orElse(List.of()));
        turned.stream().filter(t -> !all.contains(t)).forEach(all::add);
        return new InHand(angles, all);
    }

    /** What is turned over angles that were solved. */
    JointAngles over(JointAngles solved) {
        JointAngles over = solved;
        for (Turn turn : turns) {
            for (Side side : turn.side.map(List::of).orElse(List.of(Side.RIGHT, Side.LEFT))) {
                over = over.with(turn.motion, side, angles.get(turn.motion, side));
            }
        }
        return over;
    }

    /** The pose with these angles. */
    Pose in(Pose pose) {
        return pose.withAngles(angles);
    }

    Set<Motion> motions() {
        return turns.stream().map(Turn::motion).collect(Collectors.toSet());
    }

    /** The drill with what is turned in whole degrees. */
    YamlDocument written(YamlDocument drill, PoseFrame frame) {
        YamlDocument next = drill;
        for (Turn turn : turns) {
            next = PoseText.turned(
                    next,
                    frame,
                    turn.motion,
                    turn.side,
                    Math.round(angles.get(turn.motion, turn.side.orElse(Side.RIGHT))));
        }
        return next;
    }
}
