package org.drillsheaf.figure.body;

import org.drillsheaf.Side;

/** Buttock, leg and foot of one side. */
final class LegShape extends LimbShape {
    /** Height of the foot's axis against the ankle, statures. */
    static final double FOOT_AXIS = -.0265;
    /** How far behind the ankle the axis begins, and its length. */
    private static final double HEEL_BEHIND = .030;

    /** Knee bend at which calf and thigh begin to press each other flat, degrees, and from which they lie on each other. */
    private static final double PRESSING_FROM = 110;

    private static final double PRESSED_FROM = 125;
    /** Room for the line between calf and thigh, statures on either side. */
    private static final double CREASE = .0015;
    /** Depth of the flesh that stays at the hollow of the knee, statures. */
    private static final double HOLLOW = .012;

    private static final double FOOT_LENGTH = .121;

    LegShape(Body.Flesh flesh, Side side) {
        super(flesh, side, BodyGroup.leg(side));
    }

    void add() {
        Vec3 hip = bones.point("hip", side);
        Vec3 knee = bones.point("knee", side);
        Vec3 ankle = bones.point("ankle", side);
        addGlute(hip);
        flesh.add(
                "thigh" + end,
                group,
                hanging(hip, bones.frame("thigh", side), bones.lengths().thigh(), thigh()));
        flesh.blend("trunk", "thigh" + end, hip, .115, .030);
        flesh.blend("trunk", "glute" + end, hip, .13, .028);
        flesh.blend("glute" + end, "thigh" + end, hip, .14, .035);
        addKnee(knee);
        addFoot(ankle);
    }

    private SectionProfile thigh() {
        double flexion = bones.angle(Motion.KNEE_FLEX, side);
        SectionProfile free = flesh.sections.thigh();
        double length = bones.lengths().thigh();
        return flexion <= PRESSING_FROM ? free : free.pressed(share -> room(flexion, (1 - share) * length));
    }

    private SectionProfile shank() {
        double flexion = bones.angle(Motion.KNEE_FLEX, side);
        SectionProfile free = flesh.sections.shank();
        double length = bones.lengths().shank();
        return flexion <= PRESSING_FROM ? free : free.pressed(share -> room(flexion, share * length));
    }

    /** Depth that calf and thigh each have up to the plane between them, at a distance from the knee; statures. */
    private static double room(double flexion, double fromKnee) {
        double between = fromKnee * StrictMath.tan(StrictMath.toRadians((180 - flexion) / 2));
        double early = Math.max(0, PRESSED_FROM - flexion) / (PRESSED_FROM - PRESSING_FROM);
        return Math.max(HOLLOW, between - CREASE + .06 * early);
    }

    /** The buttock follows the thigh partly. */
    private void addGlute(Vec3 hip) {
        double flexion = Math.min(120, Math.max(-20, bones.angle(Motion.HIP_FLEX, side)));
        Rotation frame = bones.frame("pelvis").then(Rotation.aboutZ(flexion * .42));
        Vec3 centre = hip.plus(frame.apply(-.024, -.010, -s * .004));
        Vec3 radii = new Vec3(.045, .053, .046).times(flesh.build.glutes());
        flesh.add("glute" + end, group, new Ellipsoid(centre, frame, radii, s));
    }

    private void addKnee(Vec3 knee) {
        double flexion = bones.angle(Motion.KNEE_FLEX, side);
        Rotation half = bones.frame("thigh", side).then(Rotation.aboutZ(-flexion * .5));
        Vec3 cap = knee.plus(half.apply(.0195 + .004 * Rotation.sin(flexion), -.002, 0));
        flesh.add("kneecap" + end, group, new Ellipsoid(cap, half, new Vec3(.0145, .021, .0185), s));
        flesh.add(
                "shank" + end,
                group,
                hanging(knee, bones.frame("shank", side), bones.lengths().shank(), shank()));
        // a constant blend would swell a straight knee
        double bend = Math.min(90, flexion * .7);
        flesh.blend("thigh" + end, "shank" + end, knee, .065, .003 + .014 * Math.max(0, Rotation.sin(bend)));
        flesh.blend("thigh" + end, "kneecap" + end, knee, .07, .012);
        flesh.blend("shank" + end, "kneecap" + end, knee, .07, .014);
    }

    private void addFoot(Vec3 ankle) {
        Rotation foot = bones.frame("foot", side);
        Vec3 heel = ankle.plus(foot.apply(-HEEL_BEHIND, FOOT_AXIS, 0));
        flesh.add("foot" + end, group, foot(heel, foot));
        flesh.blend("shank" + end, "foot" + end, ankle, .07, .022);
    }

    /** The foot as one piece, or with its toes bent up. */
    private FleshSolid foot(Vec3 heel, Rotation foot) {
        SectionProfile whole = flesh.sections.foot();
        if (bones.angle(Motion.TOES_EXT, side) == 0) {
            return lying(heel, foot, FOOT_LENGTH, whole);
        }
        Vec3 joint = bones.point("toe-joint", side);
        double first = joint.distanceTo(heel);
        double bend = first / FOOT_LENGTH;
        return new BentLoft(
                lying(heel, foot, first, whole.part(0, bend, .0165, .0115)),
                lying(joint, bones.frame("toes", side), FOOT_LENGTH - first, whole.part(bend, 1, .0115, .0125)),
                bend);
    }

    private Loft lying(Vec3 from, Rotation frame, double length, SectionProfile profile) {
        return new Loft(from, frame.axisY(), frame.axisX(), frame.axisZ().times(s), length, profile);
    }
}
