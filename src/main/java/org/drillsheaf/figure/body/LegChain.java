package org.drillsheaf.figure.body;

import static org.drillsheaf.figure.body.Motion.*;

import org.drillsheaf.Side;
import org.jspecify.annotations.Nullable;

/** Places hip, knee, ankle and foot of one side. */
final class LegChain {
    private final Skeleton body;
    private final Side side;
    private final double s;

    LegChain(Skeleton body, Side side) {
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

    /** Hip in the Grood-Suntay order on ISB axes: flexion, abduction, rotation. */
    void place() {
        Proportions lengths = body.lengths();
        Rotation pelvis = body.frame("pelvis");
        Vec3 hip = body.point("pelvis").plus(pelvis.axisZ().times(s * lengths.hipHalfBreadth()));
        put("hip", hip);
        Rotation thigh = pelvis.then(
                Rotation.aboutZ(angle(HIP_FLEX)),
                Rotation.aboutX(-s * angle(HIP_ABD)),
                Rotation.aboutY(s * angle(HIP_INT)));
        put("thigh", thigh);
        Vec3 knee = hip.plus(thigh.axisY().times(-lengths.thigh()));
        put("knee", knee);
        Rotation shank = thigh.then(Rotation.aboutZ(-angle(KNEE_FLEX)));
        put("shank", shank);
        Vec3 ankle = knee.plus(shank.axisY().times(-lengths.shank()));
        put("ankle", ankle);
        Rotation foot = foot(shank);
        put("foot", foot);
        double sole = -lengths.ankleHeight();
        put("heel", ankle.plus(foot.apply(-.0405, sole, 0)));
        put("heel-back", ankle.plus(foot.apply(-lengths.heelBehindAnkle(), sole + .013, 0)));
        Vec3 joint = ankle.plus(foot.apply(lengths.ballAheadOfAnkle(), LegShape.FOOT_AXIS, 0));
        Rotation toes = foot.then(Rotation.aboutZ(angle(TOES_EXT)));
        put("toes", toes);
        put("toe-joint", joint);
        double under = sole - LegShape.FOOT_AXIS;
        put("ball", ankle.plus(foot.apply(lengths.ballAheadOfAnkle(), sole, 0)));
        put("big-toe", joint.plus(toes.apply(.012, under, -s * .017)));
        put("little-toe", ankle.plus(foot.apply(lengths.ballAheadOfAnkle() - .008, sole, s * .019)));
        put("toe", joint.plus(toes.apply(lengths.toeAheadOfAnkle() - lengths.ballAheadOfAnkle(), under, 0)));
    }

    private Rotation foot(Rotation shank) {
        @Nullable Vec3 normal = body.posture().flatSoles().get(side);
        Rotation free = shank.then(Rotation.aboutZ(angle(ANKLE_DORSI)), Rotation.aboutX(s * angle(ANKLE_INV)));
        if (normal == null) {
            return free;
        }
        Vec3 forward = free.axisX().without(normal);
        if (forward.length() < .3) {
            forward = shank.axisX().without(normal);
        }
        forward = forward.unit();
        return new Rotation(forward, normal, forward.cross(normal));
    }
}
