package org.drillsheaf.figure.pose;

import static org.drillsheaf.figure.body.Motion.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Vec3;

/** The clinical starting postures: how the pelvis is turned in the world, and the angles that go with it. */
public enum RootPosture {
    STANDING,
    LEANING,
    /** On the back, head towards −x. */
    SUPINE,
    /** Face down, head towards +x. */
    PRONE,
    SEATED,
    /** The right foot ahead, the left knee down. */
    HALF_KNEELING,
    KNEELING,
    HANDS_AND_KNEES,
    /** On the left side, head towards +x, facing the viewer of the side view. */
    SIDE_LYING_LEFT,
    /** On the right side, head towards −x, facing the viewer of the side view. */
    SIDE_LYING_RIGHT;

    /** The word in pose files, for example {@code hands-and-knees}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<RootPosture> of(String id) {
        return Arrays.stream(values()).filter(p -> p.id().equals(id)).findFirst();
    }

    public static List<String> ids() {
        return Arrays.stream(values()).map(RootPosture::id).toList();
    }

    /** Turn of the pelvis before its own tilt. */
    public Rotation turn() {
        return switch (this) {
            case SUPINE -> Rotation.aboutZ(90);
            case PRONE, HANDS_AND_KNEES -> Rotation.aboutZ(-90);
            case SIDE_LYING_LEFT -> new Rotation(Vec3.Z, Vec3.X, Vec3.Y);
            case SIDE_LYING_RIGHT -> new Rotation(Vec3.Z, Vec3.X.times(-1), Vec3.Y.times(-1));
            case STANDING, LEANING, SEATED, HALF_KNEELING, KNEELING -> Rotation.NONE;
        };
    }

    /** Angles that the author need not write. */
    public JointAngles angles() {
        JointAngles straight = JointAngles.STRAIGHT;
        return switch (this) {
            case HANDS_AND_KNEES ->
                straight.with(HIP_FLEX, 90)
                        .with(KNEE_FLEX, 90)
                        .with(SHOULDER_FLEX, 90)
                        .with(ANKLE_DORSI, -50)
                        .with(WRIST_EXT, 80)
                        .with(NECK_FLEX, -10);
            case SEATED -> straight.with(HIP_FLEX, 88).with(KNEE_FLEX, 88);
            case HALF_KNEELING ->
                straight.with(HIP_FLEX, Side.RIGHT, 90)
                        .with(KNEE_FLEX, 90)
                        .with(HIP_FLEX, Side.LEFT, 0)
                        .with(ANKLE_DORSI, Side.LEFT, -55);
            case KNEELING -> straight.with(KNEE_FLEX, 90).with(ANKLE_DORSI, -70);
            case PRONE -> straight.with(ANKLE_DORSI, -55);
            case STANDING, LEANING, SUPINE, SIDE_LYING_LEFT, SIDE_LYING_RIGHT -> straight;
        };
    }

    /** Height of the middle of the hips from which the solver starts, statures above what carries the body. */
    double startHeight() {
        return switch (this) {
            case STANDING, LEANING -> .53;
            case SEATED -> .33;
            case KNEELING, HALF_KNEELING -> .27;
            case HANDS_AND_KNEES -> .27;
            case SUPINE, PRONE -> .06;
            case SIDE_LYING_LEFT, SIDE_LYING_RIGHT -> .1;
        };
    }

    public boolean isLying() {
        return this == SUPINE || this == PRONE || this == SIDE_LYING_LEFT || this == SIDE_LYING_RIGHT;
    }
}
