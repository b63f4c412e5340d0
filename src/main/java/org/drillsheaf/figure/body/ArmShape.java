package org.drillsheaf.figure.body;

import org.drillsheaf.Side;

/** Shoulder, arm and mitten hand of one side. */
final class ArmShape extends LimbShape {
    ArmShape(Body.Flesh flesh, Side side) {
        super(flesh, side, BodyGroup.arm(side));
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
        flesh.add("fingers" + end, group, fingers(knuckle));
        flesh.blend("forearm" + end, "palm" + end, wrist, .045, .007);
        flesh.blend("palm" + end, "fingers" + end, knuckle, .05, .006);
        addThumb(wrist, hand);
    }

    private FleshSolid fingers(Vec3 knuckle) {
        Rotation roots = bones.frame("fingers", side);
        double length = bones.lengths().fingers() - .008;
        SectionProfile whole = flesh.sections.fingers();
        if (bones.angle(Motion.HAND_FOLD, side) == 0) {
            return hanging(knuckle, roots, length, whole);
        }
        Vec3 middle = bones.point("finger-middle", side);
        double first = middle.distanceTo(knuckle);
        double bend = first / length;
        return new BentLoft(
                hanging(knuckle, roots, first, whole.part(0, bend, .009, .0078)),
                hanging(middle, bones.frame("finger-ends", side), length - first, whole.part(bend, 1, .0078, .0085)),
                bend);
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
        double closed = bones.angle(Motion.HAND_THUMB, side) / 100;
        Vec3 base = wrist.plus(hand.apply(.0085 + .0055 * closed, -.016 - .004 * closed, -s * (.002 + .004 * closed)));
        Vec3 along = hand.apply(.55 - .60 * closed, -.80 + .14 * closed, -s * (.06 + .69 * closed))
                .unit();
        Vec3 outside = hand.axisZ().cross(along).unit();
        Vec3 front = along.cross(outside).times(s);
        flesh.add("thumb" + end, group, new Loft(base, front, along, outside, .046, flesh.sections.thumb()));
        flesh.blend("palm" + end, "thumb" + end, base, .034, .009);
    }
}
