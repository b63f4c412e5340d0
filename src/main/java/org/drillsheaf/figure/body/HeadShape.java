package org.drillsheaf.figure.body;

import org.drillsheaf.Side;

/** Skull, face, nose and ears. */
final class HeadShape {
    private final Body.Flesh flesh;
    private final Vec3 base;
    private final Rotation frame;

    HeadShape(Body.Flesh flesh) {
        this.flesh = flesh;
        this.base = flesh.skeleton.point("head");
        this.frame = flesh.skeleton.frame("head");
    }

    private Vec3 at(double x, double y, double z) {
        return base.plus(frame.apply(x, y, z));
    }

    void add() {
        flesh.add("skull", BodyGroup.TRUNK, upright(at(.002, .036, 0), frame, .012, flesh.sections.skull()));
        addFace();
        flesh.add(
                "nose",
                BodyGroup.TRUNK,
                upright(at(.0615, .010, 0), frame.then(Rotation.aboutZ(24)), .019, flesh.sections.nose()));
        flesh.blend("skull", "face", base, .2, .022);
        flesh.blend("face", "nose", at(.06, .02, 0), .08, .010);
        flesh.blend("neck", "face", base, .07, .018);
        flesh.blend("neck", "skull", base, .09, .022);
        for (Side side : Side.values()) {
            double s = side == Side.RIGHT ? 1 : -1;
            Rotation ear = frame.then(Rotation.aboutZ(12), Rotation.aboutY(s * 18));
            // never blended, so that it keeps its own outline
            flesh.add(
                    "ear." + Skeleton.letter(side),
                    BodyGroup.TRUNK,
                    new Ellipsoid(at(-.004, .017, s * .0415), ear, new Vec3(.0105, .0165, .0042), s));
        }
    }

    private static Loft upright(Vec3 origin, Rotation frame, double length, SectionProfile profile) {
        return new Loft(origin, frame.axisX(), frame.axisY(), frame.axisZ(), length, profile);
    }

    /** Its axis runs from the brow down to the chin. */
    private void addFace() {
        Vec3 brow = at(.0175, .042, 0);
        Vec3 chin = at(.0275, -.0215, 0);
        Vec3 down = chin.minus(brow).unit();
        Vec3 right = frame.axisZ();
        Vec3 front = right.cross(down);
        Vec3 forward = front.dot(frame.axisX()) < 0 ? front.times(-1) : front;
        flesh.add(
                "face",
                BodyGroup.TRUNK,
                new Loft(brow, forward, down, right, chin.distanceTo(brow), flesh.sections.face()));
    }
}
