package org.drillsheaf.figure.body;

import static org.drillsheaf.figure.body.Motion.*;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;

/**
 * Joint centres and segment frames of a placed body. Points: {@code pelvis}, {@code L5}, {@code lum1} …, {@code tho3},
 * {@code C7}, {@code head}, and with {@code .R} or {@code .L} {@code hip}, {@code knee}, {@code ankle}, {@code heel},
 * {@code ball}, {@code toe}, {@code shoulder}, {@code elbow}, {@code wrist}, {@code knuckle}, {@code tip} and
 * {@code grip} (the middle of what a fist holds). Frames: x
 * forward, y up (towards the trunk for limbs), z right.
 */
public final class Skeleton {
    /** Length of one lumbar and one thoracic link, statures; together with L5 and C7 they make hip to shoulder. */
    static final double LUMBAR_LINK = .038;

    static final double THORACIC_LINK = .0535;
    /** The links of the spine from below. */
    static final List<String> LINKS = List.of("lum1", "lum2", "tho1", "tho2", "tho3");

    private final Posture posture;
    private final Proportions lengths;
    private final Map<String, Vec3> points = new LinkedHashMap<>();
    private final Map<String, Rotation> frames = new HashMap<>();

    private Skeleton(Posture posture, Proportions lengths) {
        this.posture = posture;
        this.lengths = lengths;
    }

    /** Forward kinematics. */
    public static Skeleton of(Posture posture, Proportions lengths) {
        Skeleton skeleton = new Skeleton(posture, lengths);
        skeleton.placeTrunk();
        skeleton.placeHead();
        for (Side side : Side.values()) {
            new ArmChain(skeleton, side).place();
            new LegChain(skeleton, side).place();
        }
        return skeleton;
    }

    /** {@code R} or {@code L}: the ending of sided names. */
    public static String letter(Side side) {
        return side == Side.RIGHT ? "R" : "L";
    }

    public Posture posture() {
        return posture;
    }

    public Proportions lengths() {
        return lengths;
    }

    public Set<String> pointNames() {
        return points.keySet();
    }

    public Optional<Vec3> find(String name) {
        return Optional.ofNullable(points.get(name));
    }

    /** A point that every skeleton has. */
    public Vec3 point(String name) {
        Vec3 point = points.get(name);
        if (point == null) {
            throw new IllegalArgumentException("no point " + name);
        }
        return point;
    }

    public Vec3 point(String joint, Side side) {
        return point(joint + "." + letter(side));
    }

    public Rotation frame(String name) {
        Rotation frame = frames.get(name);
        if (frame == null) {
            throw new IllegalArgumentException("no frame " + name);
        }
        return frame;
    }

    public Rotation frame(String segment, Side side) {
        return frame(segment + "." + letter(side));
    }

    void put(String name, Vec3 point) {
        points.put(name, point);
    }

    void put(String name, Rotation frame) {
        frames.put(name, frame);
    }

    double angle(Motion motion, Side side) {
        return posture.angles().get(motion, side);
    }

    private double angle(Motion motion) {
        return posture.angles().get(motion);
    }

    private void placeTrunk() {
        Rotation pelvis = posture.turn()
                .then(
                        Rotation.aboutZ(-angle(PELVIS_TILT)),
                        Rotation.aboutX(angle(PELVIS_LIST)),
                        Rotation.aboutY(angle(PELVIS_TURN)));
        put("pelvis", pelvis);
        put("pelvis", posture.root());
        Vec3 at = posture.root().plus(pelvis.apply(-.006, .065, 0));
        put("L5", at);
        Rotation frame = pelvis;
        for (String link : LINKS) {
            boolean lumbar = link.startsWith("lum");
            double bend = lumbar ? angle(SPINE_LUMBAR) / 2 : angle(SPINE_THORACIC) / 3;
            frame = frame.then(
                    Rotation.aboutZ(-bend),
                    Rotation.aboutX(angle(SPINE_SIDE) / 5),
                    Rotation.aboutY(angle(SPINE_TURN) / 5));
            put(link, frame);
            put(link, at);
            at = at.plus(frame.axisY().times(lumbar ? LUMBAR_LINK : THORACIC_LINK));
        }
        put("C7", at);
        put("thorax", frame);
    }

    /** Six tenths of the neck's motion lie below the neck, four tenths at the head. */
    private void placeHead() {
        Rotation neck = frame("thorax")
                .then(
                        Rotation.aboutZ(-.6 * angle(NECK_FLEX)),
                        Rotation.aboutX(.6 * angle(NECK_SIDE)),
                        Rotation.aboutY(.6 * angle(NECK_TURN)));
        put("neck", neck);
        Vec3 head = point("C7").plus(neck.apply(.018, .073, 0));
        put("head", head);
        Rotation skull = neck.then(
                Rotation.aboutZ(-.4 * angle(NECK_FLEX) - angle(HEAD_NOD)),
                Rotation.aboutX(.4 * angle(NECK_SIDE)),
                Rotation.aboutY(.4 * angle(NECK_TURN)));
        put("head", skull);
        put("mouth", head.plus(skull.apply(.060, -.010, 0)));
        put("vertex", head.plus(skull.apply(.002, .0965, 0)));
        put("forehead", head.plus(skull.apply(.0565, .050, 0)));
    }
}
