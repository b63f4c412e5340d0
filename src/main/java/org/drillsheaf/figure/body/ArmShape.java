package org.drillsheaf.figure.body;

import org.drillsheaf.Side;

/** Shoulder, arm and mitten hand of one side. */
final class ArmShape {
    private final Body.Flesh flesh;
    private final Skeleton bones;
    private final Side side;
    private final BodyGroup group;
    private final double s;
    private final String end;

    ArmShape(Body.Flesh flesh, Side side) {
        this.flesh = flesh;
        this.bones = flesh.skeleton;
        this.side = side;
        group = BodyGroup.arm(side);
        s = side == Side.RIGHT ? 1 : -1;
        end = "." + Skeleton.letter(side);
    }

    /** A limb that hangs from its origin along the frame's −y. */
    private Loft hanging(Vec3 from, Rotation frame, double length, SectionProfile profile) {
        return new Loft(
                from, frame.axisX(), frame.axisY().times(-1), frame.axisZ().times(s), length, profile);
    }

    void add() {
        Proportions lengths = bones.lengths();
        Sections sections = flesh.sections;
        Vec3 shoulder = bones.point("shoulder", side);
        Vec3 elbow = bones.point("elbow", side);
        Vec3 wrist = bones.point("wrist", side);
        Vec3 knuckle = bones.point("knuckle", side);
        addTrapezius(shoulder);
        flesh.add(
                "upper-arm" + end,
                group,
                hanging(shoulder, bones.frame("upper-arm", side), lengths.upperArm(), sections.upperArm()));
        flesh.blend("trapezius" + end, "upper-arm" + end, shoulder, .075, .03);
        flesh.blend("trunk", "upper-arm" + end, shoulder, .085, .03);
        flesh.add(
                "forearm" + end,
                group,
                hanging(elbow, bones.frame("forearm", side), lengths.forearm(), sections.forearm()));
        double bend = Math.min(90, Math.abs(bones.angle(Motion.ELBOW_FLEX, side)) * .7);
        flesh.blend("upper-arm" + end, "forearm" + end, elbow, .05, .002 + .012 * Rotation.sin(bend));
        Rotation hand = bones.frame("hand", side);
        flesh.add("palm" + end, group, hanging(wrist, hand, lengths.palm(), sections.palm()));
        flesh.add(
                "fingers" + end,
                group,
                hanging(knuckle, bones.frame("fingers", side), lengths.fingers() - .008, sections.fingers()));
        flesh.blend("forearm" + end, "palm" + end, wrist, .045, .007);
        flesh.blend("palm" + end, "fingers" + end, knuckle, .05, .006);
        addThumb(wrist, hand);
    }

    private void addTrapezius(Vec3 shoulder) {
        Rotation thorax = bones.frame("thorax");
        Vec3 from = bones.point("C7").plus(thorax.apply(-.004, .006, s * .014));
        Vec3 to = shoulder.plus(thorax.apply(-.004, .004, -s * .014));
        Vec3 along = to.minus(from).unit();
        Vec3 front = thorax.axisX().without(along).unit();
        flesh.add(
                "trapezius" + end,
                BodyGroup.TRUNK,
                new Loft(
                        from,
                        front,
                        along,
                        front.cross(along).times(s),
                        to.distanceTo(from),
                        flesh.sections.trapezius()));
        flesh.blend("trunk", "trapezius" + end, from, .16, .028);
        flesh.blend("neck", "trapezius" + end, from, .08, .03);
    }

    private void addThumb(Vec3 wrist, Rotation hand) {
        Vec3 base = wrist.plus(hand.apply(.0085, -.016, -s * .002));
        Vec3 along = hand.apply(.55, -.80, -s * .06).unit();
        Vec3 outside = hand.axisZ().cross(along).unit();
        Vec3 front = along.cross(outside).times(s);
        flesh.add("thumb" + end, group, new Loft(base, front, along, outside, .046, flesh.sections.thumb()));
        flesh.blend("palm" + end, "thumb" + end, base, .034, .009);
    }
}
