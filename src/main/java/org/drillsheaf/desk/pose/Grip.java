package org.drillsheaf.desk.pose;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Skeleton;

/**
 * Where the figure can be taken hold of. Pulling a grip moves its point by turning the joints before it; the keys turn the joint
 * itself.
 */
public enum Grip {
    HEAD("head", false, List.of(Motion.HEAD_NOD, Motion.NECK_TURN), List.of(Motion.NECK_FLEX, Motion.NECK_SIDE)),
    NECK("C7", false, List.of(Motion.NECK_FLEX, Motion.NECK_SIDE), List.of(Motion.SPINE_THORACIC, Motion.SPINE_SIDE)),
    CHEST(
            "tho1",
            false,
            List.of(Motion.SPINE_THORACIC, Motion.SPINE_SIDE),
            List.of(Motion.SPINE_LUMBAR, Motion.SPINE_SIDE)),
    LOW_BACK(
            "lum1",
            false,
            List.of(Motion.SPINE_LUMBAR, Motion.SPINE_TURN),
            List.of(Motion.PELVIS_TILT, Motion.PELVIS_LIST)),
    PELVIS("pelvis", false, List.of(Motion.PELVIS_TILT, Motion.PELVIS_LIST), List.of()),
    SHOULDER(
            "shoulder",
            true,
            List.of(Motion.SHOULDER_FLEX, Motion.SHOULDER_ABD),
            List.of(Motion.SCAPULA_PROTRACT, Motion.SCAPULA_ELEVATE)),
    ELBOW(
            "elbow",
            true,
            List.of(Motion.ELBOW_FLEX, Motion.ELBOW_PRON),
            List.of(Motion.SHOULDER_FLEX, Motion.SHOULDER_ABD)),
    WRIST(
            "wrist",
            true,
            List.of(Motion.WRIST_FLEX, Motion.WRIST_RADIAL),
            List.of(Motion.ELBOW_FLEX, Motion.SHOULDER_INT)),
    HAND("knuckle", true, List.of(Motion.HAND_CURL, Motion.WRIST_EXT), List.of(Motion.WRIST_FLEX, Motion.WRIST_RADIAL)),
    HIP("hip", true, List.of(Motion.HIP_FLEX, Motion.HIP_ABD), List.of()),
    KNEE("knee", true, List.of(Motion.KNEE_FLEX, Motion.HIP_INT), List.of(Motion.HIP_FLEX, Motion.HIP_ABD)),
    ANKLE("ankle", true, List.of(Motion.ANKLE_DORSI, Motion.ANKLE_INV), List.of(Motion.KNEE_FLEX, Motion.HIP_INT)),
    TOES("toe", true, List.of(Motion.ANKLE_DORSI, Motion.ANKLE_INV), List.of(Motion.ANKLE_DORSI, Motion.ANKLE_INV));

    private final String point;
    private final boolean paired;
    private final List<Motion> keys;
    private final List<Motion> pull;

    Grip(String point, boolean paired, List<Motion> keys, List<Motion> pull) {
        this.point = point;
        this.paired = paired;
        this.keys = keys;
        this.pull = pull;
    }

    /**
     * A grip of one side.
     *
     * @param side empty for the middle of the body
     */
    public record At(Grip grip, Optional<Side> side) {
        /** Name of the body point. */
        public String point() {
            return grip.point + side.map(s -> "." + Skeleton.letter(s)).orElse("");
        }

        public Side anySide() {
            return side.orElse(Side.RIGHT);
        }
    }

    /** All grips from the head down, the right side before the left. */
    public static List<At> all() {
        return Arrays.stream(values())
                .flatMap(g -> (g.paired
                                ? List.of(Optional.of(Side.RIGHT), Optional.of(Side.LEFT))
                                : List.of(Optional.<Side>empty()))
                        .stream().map(side -> new At(g, side)))
                .toList();
    }

    /** What the arrow keys turn: left and right the first, up and down the second. */
    public List<Motion> keys(JointAngles angles, Side side) {
        return inUse(keys, angles, side);
    }

    /** What pulling turns; empty where there is nothing before it to turn. */
    public List<Motion> pull(JointAngles angles, Side side) {
        return inUse(pull, angles, side);
    }

    /** An arm may be written in three ways; only the one that is written counts. */
    private static List<Motion> inUse(List<Motion> motions, JointAngles angles, Side side) {
        return motions.stream()
                .map(m -> m == Motion.SHOULDER_FLEX ? lift(angles, side) : m)
                .map(m -> m == Motion.SHOULDER_ABD && lift(angles, side) == Motion.SHOULDER_ELEV
                        ? Motion.SHOULDER_PLANE
                        : m)
                .toList();
    }

    static Motion lift(JointAngles angles, Side side) {
        if (angles.isSet(Motion.SHOULDER_ELEV, side)) {
            return Motion.SHOULDER_ELEV;
        }
        return angles.isSet(Motion.SHOULDER_FROM_TRUNK, side) ? Motion.SHOULDER_FROM_TRUNK : Motion.SHOULDER_FLEX;
    }
}
