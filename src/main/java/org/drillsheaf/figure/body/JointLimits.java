package org.drillsheaf.figure.body;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Source;

/**
 * How far each motion goes in the figure. These are limits of what can be drawn as a human being, not norms: a pose
 * beyond them is a mistake. Where a published mean of passive motion is known, the limit is the mean of the most mobile
 * adult group rounded up to five, plus ten degrees for spread (our own margin).
 */
public final class JointLimits {
    private static final String CDC =
            "Soucie JM et al., Haemophilia 2011;17:500-507 (passive motion, adults 20-69 years)";
    private static final String HANDBOOK = "AAOS, Joint Motion: Method of Measuring and Recording, 1965";

    /**
     * @param least degrees, {@code most} likewise
     * @param source where the numbers come from
     */
    public record Limit(double least, double most, Source source) {

        public boolean allows(double degrees) {
            return degrees >= least && degrees <= most;
        }
    }

    private static final Map<Motion, Limit> LIMITS = new EnumMap<>(Motion.class);

    static {
        own(Motion.PELVIS_TILT, -100, 120, "whole-body lean is written as pelvis tilt, so it may be large");
        own(Motion.PELVIS_LIST, -45, 45, "lean to the side");
        own(Motion.PELVIS_TURN, -60, 60, "turn against the root posture");
        own(Motion.SPINE_LUMBAR, -30, 60, "bend of the drawn two-link low back");
        own(Motion.SPINE_THORACIC, -30, 60, "bend of the drawn three-link chest");
        own(Motion.SPINE_SIDE, -40, 40, "bend of the drawn spine");
        own(Motion.SPINE_TURN, -50, 50, "turn of the drawn spine");
        own(Motion.NECK_FLEX, -60, 60, "bend of the drawn neck");
        own(Motion.NECK_SIDE, -45, 45, "bend of the drawn neck");
        own(Motion.NECK_TURN, -80, 80, "turn of the drawn neck");
        own(Motion.HEAD_NOD, -40, 40, "nod of the drawn head");
        derived(Motion.HIP_FLEX, -30, 145, CDC + ": flexion 133.8 (from memory), extension 18.1 (from memory)");
        memory(Motion.HIP_ABD, -40, 55, HANDBOOK + ": abduction 45, adduction 30");
        memory(Motion.HIP_INT, -55, 55, HANDBOOK + ": 45 each way");
        derived(Motion.KNEE_FLEX, -15, 155, CDC + ": flexion 141.9, hyperextension 1.6");
        memory(
                Motion.ANKLE_DORSI,
                -85,
                45,
                CDC + ": plantarflexion 62.1; the whole foot with toes reaches further in kneeling,"
                        + " and body weight bends the ankle further than a hand does (lunge)");
        own(Motion.ANKLE_INV, -25, 40, "tilt of the drawn foot");
        own(Motion.SCAPULA_PROTRACT, -30, 50, "slide of the drawn shoulder blade");
        own(Motion.SCAPULA_ELEVATE, -25, 60, "rise of the drawn shoulder blade");
        derived(Motion.SHOULDER_FLEX, -70, 185, CDC + ": flexion 172.0; " + HANDBOOK + ": extension 60");
        memory(Motion.SHOULDER_ABD, -60, 185, HANDBOOK + ": abduction 180");
        memory(Motion.SHOULDER_INT, -100, 100, HANDBOOK + ": internal 70, external 90");
        derived(Motion.SHOULDER_FROM_TRUNK, -70, 190, CDC + ": flexion 172.0");
        memory(Motion.SHOULDER_ELEV, 0, 185, HANDBOOK + ": 180");
        own(Motion.SHOULDER_PLANE, -60, 140, "plane of lift");
        derived(Motion.ELBOW_FLEX, -15, 160, CDC + ": flexion 150.0, hyperextension 4.7 (from memory)");
        derived(Motion.ELBOW_PRON, -105, 95, CDC + ": pronation 82.0, supination 90.6");
        own(Motion.WRIST_FLEX, -90, 90, "bend of the drawn wrist");
        own(Motion.WRIST_EXT, -90, 100, "bend of the drawn wrist");
        own(Motion.WRIST_RADIAL, -40, 30, "bend of the drawn wrist");
        own(Motion.HAND_CURL, -20, 130, "bend of the drawn fingers");
        own(Motion.HAND_FOLD, 0, 110, "bend of the drawn fingers");
        own(Motion.HAND_THUMB, 0, 110, "bend of the drawn thumb");
        memory(Motion.TOES_EXT, 0, 90, HANDBOOK + ": great toe extension 70; body weight bends it further");
    }

    private JointLimits() {}

    private static void put(Motion motion, double least, double most, Source.Kind kind, String text) {
        LIMITS.put(motion, new Limit(least, most, new Source(kind, text)));
    }

    private static void own(Motion motion, double least, double most, String text) {
        put(motion, least, most, Source.Kind.HOUSE, text);
    }

    private static void derived(Motion motion, double least, double most, String text) {
        put(motion, least, most, Source.Kind.DERIVED, text);
    }

    private static void memory(Motion motion, double least, double most, String text) {
        put(motion, least, most, Source.Kind.MEMORY, text);
    }

    public static Limit of(Motion motion) {
        return Optional.ofNullable(LIMITS.get(motion)).orElseThrow();
    }
}
