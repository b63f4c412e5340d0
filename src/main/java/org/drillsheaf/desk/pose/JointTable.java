package org.drillsheaf.desk.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.pose.Contact;
import org.drillsheaf.figure.pose.Pose;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.Unknown;

/**
 * All movements of a keyframe with the angles that are shown for them, from the head down.
 *
 * @param angles what is written, or in hand
 * @param solved where the contacts left the joints
 * @param held movements in hand: they show what the hand wants
 * @param split whether the two sides are written apart
 */
record JointTable(
        Pose pose, JointAngles angles, Optional<SolvedPose> solved, Set<Motion> held, Predicate<Motion> split) {

    List<JointRow> rows() {
        List<JointRow> all = new ArrayList<>();
        for (Motion motion : Motion.values()) {
            if (!isInUse(motion)) {
                continue;
            }
            boolean apart = motion.isPaired()
                    && (split.test(motion) || angles.get(motion, Side.RIGHT) != angles.get(motion, Side.LEFT));
            if (apart) {
                all.add(row(motion, Optional.of(Side.RIGHT)));
                all.add(row(motion, Optional.of(Side.LEFT)));
            } else {
                all.add(row(motion, Optional.empty()));
            }
        }
        return List.copyOf(all);
    }

    /** Of the three ways to write an arm only the one that counts is shown. */
    private boolean isInUse(Motion motion) {
        boolean elevation = Grip.lift(angles, Side.RIGHT) == Motion.SHOULDER_ELEV;
        return switch (motion) {
            case SHOULDER_FLEX, SHOULDER_FROM_TRUNK, SHOULDER_ELEV ->
                motion == Grip.lift(angles, Side.RIGHT) || motion == Grip.lift(angles, Side.LEFT);
            case SHOULDER_ABD -> !elevation;
            case SHOULDER_PLANE -> elevation;
            default -> true;
        };
    }

    private JointRow row(Motion motion, Optional<Side> side) {
        Side one = side.orElse(Side.RIGHT);
        boolean touch = isByTouch(motion, one);
        double degrees = touch && !held.contains(motion) && solved.isPresent()
                ? solved.get().angle(motion, one)
                : angles.get(motion, one);
        return new JointRow(motion, side, degrees, touch);
    }

    private boolean isByTouch(Motion motion, Side side) {
        boolean free = pose.solve().stream()
                .anyMatch(u -> u instanceof Unknown.Angle a
                        && a.motion() == motion
                        && a.side().filter(s -> s != side).isEmpty());
        boolean flat = (motion == Motion.ANKLE_DORSI || motion == Motion.ANKLE_INV)
                && pose.contacts().stream().anyMatch(c -> c instanceof Contact.Flat f && f.side() == side);
        return free || flat;
    }
}
