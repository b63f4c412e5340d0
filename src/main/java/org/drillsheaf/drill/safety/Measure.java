package org.drillsheaf.drill.safety;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.saying.Saying;

/**
 * What a rule may ask of a drill. Angles are the worst case over all keyframes and both sides of the solved pose, in
 * clinical degrees; dose measures are those of the largest dose.
 */
public enum Measure {
    HIP_FLEXION(Kind.NUMBER),
    HIP_EXTENSION(Kind.NUMBER),
    HIP_IN(Kind.NUMBER),
    HIP_OUT(Kind.NUMBER),
    /** Turned out while the hip bends less than 20 degrees. */
    HIP_OUT_STRAIGHT(Kind.NUMBER),
    HIP_ACROSS(Kind.TRUTH),
    KNEE_LOAD(Kind.NUMBER),
    KNEE_CONTACT(Kind.TRUTH),
    SPINE_FORWARD(Kind.NUMBER),
    SPINE_BACK(Kind.NUMBER),
    SPINE_TURN(Kind.NUMBER),
    NECK_FORWARD(Kind.NUMBER),
    NECK_TURN(Kind.NUMBER),
    HEAD_LOW(Kind.TRUTH),
    FEET_HIGH(Kind.TRUTH),
    HIPS_HIGH(Kind.TRUTH),
    LEG_TENSION(Kind.NUMBER),
    ARM_UP(Kind.NUMBER),
    ARM_OUT_TURNED(Kind.TRUTH),
    WRIST_LOAD(Kind.NUMBER),
    SHOULDER_LOAD(Kind.NUMBER),
    ON_FLOOR(Kind.TRUTH),
    FLAT_BACK(Kind.TRUTH),
    FACE_DOWN(Kind.TRUTH),
    ON_SIDE(Kind.TRUTH),
    /** 0 sitting or lying, 1 both feet and something firm, 2 both feet free or split stance free, 3 one foot or walking. */
    STAND(Kind.NUMBER),
    /** As {@link #STAND}, but 0 while a hand, forearm or the back rests on something firm in every keyframe. */
    FREE_STAND(Kind.NUMBER),
    LEG_BEHIND(Kind.TRUTH),
    NOTHING_STOPS(Kind.TRUTH),
    NO_FREE_HAND(Kind.TRUTH),
    HELD_WEIGHT(Kind.NUMBER),
    STILL(Kind.TRUTH),
    EFFORT(Kind.NUMBER),
    HOLD(Kind.NUMBER),
    PAUSE(Kind.NUMBER),
    BREATH_OUT(Kind.NUMBER),
    RESIST(Kind.TRUTH),
    FOCUS(Kind.NUMBER),
    BELLY(Kind.NUMBER),
    MINUTES(Kind.NUMBER),
    END_RANGE(Kind.TRUTH),
    BREATH_HOLD(Kind.TRUTH),
    HEAD_DOWN(Kind.TRUTH),
    QUICK(Kind.TRUTH),
    LEVEL(Kind.NUMBER);

    /** Whether a measure is a number or a yes or no. */
    public enum Kind {
        NUMBER,
        TRUTH
    }

    private final Kind kind;

    Measure(Kind kind) {
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }

    /** For the coach: what it is, with its unit. */
    public Saying words() {
        return Saying.phrase("measure." + id());
    }

    /** The word in the rules, for example {@code hip-flexion}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Measure> of(String id) {
        return Arrays.stream(values()).filter(m -> m.id().equals(id)).findFirst();
    }
}
