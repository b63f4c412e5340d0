package org.drillsheaf.drill.safety;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What a rule may ask of a drill. Angles are the worst case over all keyframes and both sides of the solved pose, in
 * clinical degrees; dose measures are those of the largest dose.
 */
public enum Measure {
    HIP_FLEXION(Kind.NUMBER, "hip bend, degrees"),
    HIP_EXTENSION(Kind.NUMBER, "thigh behind the trunk line, degrees"),
    HIP_IN(Kind.NUMBER, "thigh turned in, degrees"),
    HIP_OUT(Kind.NUMBER, "thigh turned out, degrees"),
    /** Turned out while the hip bends less than 20 degrees. */
    HIP_OUT_STRAIGHT(Kind.NUMBER, "thigh turned out with a straight hip, degrees"),
    HIP_ACROSS(Kind.TRUTH, "leg crosses the midline, or the pelvis slides over a loaded foot"),
    KNEE_LOAD(Kind.NUMBER, "knee bend under load, degrees"),
    KNEE_CONTACT(Kind.TRUTH, "a knee on the floor or pad"),
    SPINE_FORWARD(Kind.NUMBER, "back rounded, degrees"),
    SPINE_BACK(Kind.NUMBER, "back arched, degrees"),
    SPINE_TURN(Kind.NUMBER, "back turned, degrees"),
    NECK_FORWARD(Kind.NUMBER, "neck bent forward, degrees"),
    NECK_TURN(Kind.NUMBER, "neck turned, degrees"),
    HEAD_LOW(Kind.TRUTH, "head lower than the chest"),
    FEET_HIGH(Kind.TRUTH, "feet above the chest, lying"),
    HIPS_HIGH(Kind.TRUTH, "hips above the chest, lying"),
    LEG_TENSION(Kind.NUMBER, "hip bend with a nearly straight knee, degrees"),
    ARM_UP(Kind.NUMBER, "arm raised from the trunk, degrees"),
    ARM_OUT_TURNED(Kind.TRUTH, "arm out to the side and turned out"),
    WRIST_LOAD(Kind.NUMBER, "weight on the hands, 0 to 2"),
    SHOULDER_LOAD(Kind.NUMBER, "weight on the shoulder, 0 to 2"),
    ON_FLOOR(Kind.TRUTH, "down on the floor"),
    FLAT_BACK(Kind.TRUTH, "flat on the back"),
    FACE_DOWN(Kind.TRUTH, "face down"),
    ON_SIDE(Kind.TRUTH, "on the side"),
    /** 0 sitting or lying, 1 both feet and something firm, 2 both feet free or split stance free, 3 one foot or walking. */
    STAND(Kind.NUMBER, "standing without support, 0 to 3"),
    /** As {@link #STAND}, but 0 while a hand, forearm or the back rests on something firm in every keyframe. */
    FREE_STAND(Kind.NUMBER, "standing with no hand on anything firm, 0 to 3"),
    LEG_BEHIND(Kind.TRUTH, "standing with a leg behind the trunk line"),
    NOTHING_STOPS(Kind.TRUTH, "nothing ends the depth"),
    NO_FREE_HAND(Kind.TRUTH, "no hand is free for a support"),
    HELD_WEIGHT(Kind.NUMBER, "weight in the hand, kg"),
    STILL(Kind.TRUTH, "stands on one spot for two minutes"),
    EFFORT(Kind.NUMBER, "effort, 0 to 10"),
    HOLD(Kind.NUMBER, "steady work, seconds"),
    PAUSE(Kind.NUMBER, "wait after the breath out, seconds"),
    BREATH_OUT(Kind.NUMBER, "breath out, seconds"),
    RESIST(Kind.TRUTH, "breath out against a resistance"),
    FOCUS(Kind.NUMBER, "attention on the breath, 0 to 2"),
    BELLY(Kind.NUMBER, "load on the belly wall, 0 to 3"),
    MINUTES(Kind.NUMBER, "minutes in one position"),
    END_RANGE(Kind.TRUTH, "goes to the end of a joint's range"),
    BREATH_HOLD(Kind.TRUTH, "holds the breath"),
    HEAD_DOWN(Kind.TRUTH, "hangs the head down"),
    QUICK(Kind.TRUTH, "quick moves"),
    LEVEL(Kind.NUMBER, "level in the family");

    /** Whether a measure is a number or a yes or no. */
    public enum Kind {
        NUMBER,
        TRUTH
    }

    private final Kind kind;
    private final String words;

    Measure(Kind kind, String words) {
        this.kind = kind;
        this.words = words;
    }

    public Kind kind() {
        return kind;
    }

    /** For the coach: what it is, with its unit. */
    public String words() {
        return words;
    }

    /** The word in the rules, for example {@code hip-flexion}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Measure> of(String id) {
        return Arrays.stream(values()).filter(m -> m.id().equals(id)).findFirst();
    }
}
