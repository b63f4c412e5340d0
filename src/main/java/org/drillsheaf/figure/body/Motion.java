package org.drillsheaf.figure.body;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One way a joint can move, in the trade's terms. Zero is the upright anatomical figure with the thumbs forward;
 * positive is what the movement's word says. Degrees.
 */
public enum Motion {
    /** Top of the pelvis forward. */
    PELVIS_TILT("pelvis", "tilt"),
    /** Left side of the pelvis up, right side down. */
    PELVIS_LIST("pelvis", "list"),
    /** Pelvis turns to the left. */
    PELVIS_TURN("pelvis", "turn"),
    /** Forward bend of the low back, over two links. */
    SPINE_LUMBAR("spine", "lumbar"),
    /** Forward bend of the chest, over three links. */
    SPINE_THORACIC("spine", "thoracic"),
    /** Bend to the right, over all five links. */
    SPINE_SIDE("spine", "side"),
    /** Turn to the left, over all five links. */
    SPINE_TURN("spine", "turn"),
    NECK_FLEX("neck", "flex"),
    /** Bend to the right. */
    NECK_SIDE("neck", "side"),
    /** Turn to the left. */
    NECK_TURN("neck", "turn"),
    /** The nod of the head upon the neck. */
    HEAD_NOD("head", "nod"),
    HIP_FLEX("hip", "flex", true),
    HIP_ABD("hip", "abd", true),
    HIP_INT("hip", "int", true),
    KNEE_FLEX("knee", "flex", true),
    ANKLE_DORSI("ankle", "dorsi", true),
    ANKLE_INV("ankle", "inv", true),
    /** Shoulder blade slides forward around the ribs. */
    SCAPULA_PROTRACT("scapula", "protract", true),
    SCAPULA_ELEVATE("scapula", "elevate", true),
    /** Forward lift against the upper chest. Not used while {@link #SHOULDER_FROM_TRUNK} or elev is set. */
    SHOULDER_FLEX("shoulder", "flex", true),
    SHOULDER_ABD("shoulder", "abd", true),
    SHOULDER_INT("shoulder", "int", true),
    /** Forward lift against the line from shoulder to hip: what a coach means. */
    SHOULDER_FROM_TRUNK("shoulder", "from-trunk", true),
    /** Lift in the plane given by {@link #SHOULDER_PLANE}; used instead of flex and abd when set. */
    SHOULDER_ELEV("shoulder", "elev", true),
    /** 0 = sideways, 90 = forward. */
    SHOULDER_PLANE("shoulder", "plane", true),
    ELBOW_FLEX("elbow", "flex", true),
    /** 0 = thumb forward, −80 = palm up when the arm is forward. */
    ELBOW_PRON("elbow", "pron", true),
    WRIST_FLEX("wrist", "flex", true),
    WRIST_EXT("wrist", "ext", true),
    WRIST_RADIAL("wrist", "radial", true),
    /** Fingers bend into the palm. */
    HAND_CURL("hand", "curl", true),
    /** Fingers bend at their middle joints. */
    HAND_FOLD("hand", "fold", true),
    /** Thumb against the fingers: 0 spread, 100 over the closed fist. */
    HAND_THUMB("hand", "thumb", true),
    /** Toes up against the foot, as when they are tucked under in kneeling. */
    TOES_EXT("toes", "ext", true);

    private final String joint;
    private final String movement;
    private final boolean paired;

    Motion(String joint, String movement) {
        this(joint, movement, false);
    }

    Motion(String joint, String movement, boolean paired) {
        this.joint = joint;
        this.movement = movement;
        this.paired = paired;
    }

    /** The joint's word in pose files. */
    public String joint() {
        return joint;
    }

    /** The movement's word in pose files. */
    public String movement() {
        return movement;
    }

    /** Whether the body has a right and a left one. */
    public boolean isPaired() {
        return paired;
    }

    /** Whether the number changes its sign when left and right are exchanged. */
    public boolean turnsAroundInMirror() {
        return switch (this) {
            case PELVIS_LIST, PELVIS_TURN, SPINE_SIDE, SPINE_TURN, NECK_SIDE, NECK_TURN -> true;
            default -> false;
        };
    }

    public static Optional<Motion> of(String joint, String movement) {
        return Arrays.stream(values())
                .filter(m -> m.joint.equals(joint) && m.movement.equals(movement))
                .findFirst();
    }

    /** All movements of a joint; empty when there is no such joint. */
    public static List<Motion> of(String joint) {
        return Arrays.stream(values()).filter(m -> m.joint.equals(joint)).toList();
    }

    /** All joint words in the order of the body. */
    public static List<String> joints() {
        return Arrays.stream(values()).map(Motion::joint).distinct().toList();
    }
}
