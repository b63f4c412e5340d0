package org.drillsheaf.figure.body;

import static org.drillsheaf.figure.body.Motion.*;

import org.drillsheaf.Side;

/** Places shoulder girdle, arm and hand of one side. */
final class ArmChain {
    /** Above this lift of the arm, degrees, the girdle rises with it … */
    private static final double RHYTHM_FROM = 40;
    /** … by this many degrees a degree (own value, chosen by eye; scapulohumeral rhythm is about 1 : 2 overall). */
    private static final double RHYTHM = .22;

    /** Knuckles to the middle joints of the fingers, share of the fingers. */
    static final double FINGER_ROOTS = .54;
    /** From the middle of the palm to the middle of a rod in the fist, statures. */
    private static final double GRIP_DEPTH = .0170;

    private final Skeleton body;
    private final Side side;
    private final double s;

    ArmChain(Skeleton body, Side side) {
        this.body = body;
        this.side = side;
        s = side == Side.RIGHT ? 1 : -1;
    }

    private double angle(Motion motion) {
        return body.angle(motion, side);
    }

    private void put(String name, Vec3 point) {
        body.put(name + "." + Skeleton.letter(side), point);
    }

    private void put(String name, Rotation frame) {
        body.put(name + "." + Skeleton.letter(side), frame);
    }

    void place() {
        Proportions lengths = body.lengths();
        JointAngles angles = body.posture().angles();
        Rotation thorax = body.frame("thorax");
        boolean fromTrunk = angles.isSet(SHOULDER_FROM_TRUNK, side);
        Rotation lift = lift(fromTrunk ? angle(SHOULDER_FROM_TRUNK) : angle(SHOULDER_FLEX));
        Vec3 shoulder = shoulder(thorax, lift, lengths);
        if (fromTrunk) {
            Vec3 down = body.point("pelvis").minus(shoulder);
            double trunkLine =
                    StrictMath.toDegrees(StrictMath.atan2(down.dot(thorax.axisX()), -down.dot(thorax.axisY())));
            lift = lift(angle(SHOULDER_FROM_TRUNK) + trunkLine);
        }
        put("shoulder", shoulder);
        Rotation upperArm = thorax.then(lift);
        put("upper-arm", upperArm);
        Vec3 elbow = shoulder.plus(upperArm.axisY().times(-lengths.upperArm()));
        put("elbow", elbow);
        Rotation bent = upperArm.then(Rotation.aboutZ(angle(ELBOW_FLEX)));
        put("elbow", bent);
        put("forearm", bent.then(Rotation.aboutY(s * .5 * angle(ELBOW_PRON))));
        Rotation turned = bent.then(Rotation.aboutY(s * angle(ELBOW_PRON)));
        put("wrist", turned);
        Vec3 wrist = elbow.plus(turned.axisY().times(-lengths.forearm()));
        put("wrist", wrist);
        Rotation hand = turned.then(
                Rotation.aboutX(s * (angle(WRIST_FLEX) - angle(WRIST_EXT))), Rotation.aboutZ(angle(WRIST_RADIAL)));
        put("hand", hand);
        Vec3 knuckle = wrist.plus(hand.axisY().times(-lengths.palm()));
        put("knuckle", knuckle);
        put("palm", wrist.plus(hand.apply(0, -.6 * lengths.palm(), -s * .0112)));
        Rotation fingers = hand.then(Rotation.aboutX(s * angle(HAND_CURL)));
        put("fingers", fingers);
        Rotation ends = fingers.then(Rotation.aboutX(s * angle(HAND_FOLD)));
        put("finger-ends", ends);
        double roots = FINGER_ROOTS * lengths.fingers();
        Vec3 middle = knuckle.plus(fingers.axisY().times(-roots));
        put("finger-middle", middle);
        put("tip", middle.plus(ends.axisY().times(roots - lengths.fingers())));
        put("grip", knuckle.plus(hand.apply(0, .008, -s * GRIP_DEPTH)));
    }

    private Rotation lift(double flex) {
        double turn = s * angle(SHOULDER_INT);
        if (body.posture().angles().isSet(SHOULDER_ELEV, side)) {
            double plane = s * angle(SHOULDER_PLANE);
            return Rotation.aboutY(plane)
                    .then(Rotation.aboutX(-s * angle(SHOULDER_ELEV)), Rotation.aboutY(turn - plane));
        }
        return Rotation.aboutZ(flex).then(Rotation.aboutX(-s * angle(SHOULDER_ABD)), Rotation.aboutY(turn));
    }

    private Vec3 shoulder(Rotation thorax, Rotation lift, Proportions lengths) {
        double raised = StrictMath.toDegrees(
                StrictMath.acos(Math.min(1, Math.max(-1, lift.axisY().y()))));
        double rhythm = Math.max(0, raised - RHYTHM_FROM) * RHYTHM;
        Vec3 c7 = body.point("C7");
        Vec3 collar = new Vec3(.030, -.028, s * .014);
        Rotation girdle = thorax.then(
                Rotation.aboutY(s * angle(SCAPULA_PROTRACT)), Rotation.aboutX(-s * (angle(SCAPULA_ELEVATE) + rhythm)));
        Vec3 outwards = new Vec3(.001, -.025, s * lengths.shoulderHalfBreadth()).minus(collar);
        return c7.plus(thorax.apply(collar)).plus(girdle.apply(outwards));
    }
}
