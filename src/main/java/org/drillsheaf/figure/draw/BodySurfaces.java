package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyPart;
import org.drillsheaf.figure.body.MuscleRegions;
import org.drillsheaf.figure.body.PropSolid;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.jspecify.annotations.Nullable;

/** Clothes, hair, toes and muscles: what each point of the body's skin is. Plain shirt and shorts, bare feet. */
final class BodySurfaces implements Scene.Surfaces {
    private enum Kind {
        HEAD,
        NECK,
        TRUNK,
        COLLAR,
        GLUTE,
        THIGH,
        UPPER_ARM,
        FINGERS,
        FOOT,
        BARE
    }

    private static final double TOP_OF_SHORTS = 0.345;
    private static final double LEG_OF_SHORTS = 0.52;
    private static final double SLEEVE = 0.40;
    private static final double SHOULDER_SEAM = 0.10;

    private final Body body;
    private final Kind[] kinds;
    private final @Nullable Digits[] digits;
    private final MuscleRegions.Patch[][] patches;
    private final List<PropSolid> props;
    private final Rotation head;
    private final Vec3 skullBase;
    private final Rotation thorax;
    private final Vec3 collar;

    BodySurfaces(Body body, List<String> muscles, List<PropSolid> props) {
        this.body = body;
        this.props = props;
        int count = body.parts().size();
        kinds = new Kind[count];
        for (int i = 0; i < count; i++) {
            kinds[i] = kind(body.parts().get(i));
        }
        digits = new Digits[count];
        for (int i = 0; i < count; i++) {
            digits[i] = digits(body, body.parts().get(i).name());
        }
        List<MuscleRegions.Patch> all = new ArrayList<>();
        muscles.forEach(muscle -> all.addAll(MuscleRegions.patches(muscle)));
        patches = new MuscleRegions.Patch[count][];
        for (int i = 0; i < count; i++) {
            String part = body.parts().get(i).name();
            patches[i] = all.stream().filter(p -> p.part().equals(part)).toArray(MuscleRegions.Patch[]::new);
        }
        head = body.skeleton().frame("head");
        skullBase = body.skeleton().point("head");
        thorax = body.skeleton().frame("thorax");
        collar = body.skeleton().point("C7").plus(thorax.apply(.006, .006, 0));
    }

    private static @Nullable Digits digits(Body body, String part) {
        Skeleton bones = body.skeleton();
        String end = part.substring(part.length() - 2);
        double outside = end.equals(".R") ? 1 : -1;
        if (part.startsWith("foot")) {
            return new Digits(bones.frame("toes" + end), bones.point("toe-joint" + end), outside);
        }
        return part.startsWith("fingers")
                ? new Digits(bones.frame("fingers" + end), bones.point("knuckle" + end), outside)
                : null;
    }

    private static Kind kind(BodyPart part) {
        String name = part.name().replaceAll("\\.[RL]$", "");
        return switch (name) {
            case "skull", "face" -> Kind.HEAD;
            case "neck" -> Kind.NECK;
            case "trunk" -> Kind.TRUNK;
            case "trapezius" -> Kind.COLLAR;
            case "glute" -> Kind.GLUTE;
            case "thigh" -> Kind.THIGH;
            case "upper-arm" -> Kind.UPPER_ARM;
            case "fingers" -> Kind.FINGERS;
            case "foot" -> Kind.FOOT;
            default -> Kind.BARE;
        };
    }

    @Override
    public short part(int solid, double x, double y, double z) {
        if (solid >= kinds.length) {
            int prop = solid - kinds.length;
            PropSolid shape = props.get(prop);
            return Parts.face(prop, shape.face(x, y, z));
        }
        return switch (kinds[solid]) {
            case HEAD -> head(x, y, z);
            case NECK -> neck(x, y, z);
            case TRUNK -> share(solid, x, y, z) < TOP_OF_SHORTS ? Parts.SHORTS : shirt(x, y, z);
            case COLLAR -> shirt(x, y, z);
            case GLUTE -> Parts.SHORTS;
            case THIGH -> share(solid, x, y, z) < LEG_OF_SHORTS ? Parts.SHORTS : Parts.SKIN;
            case UPPER_ARM -> {
                double share = share(solid, x, y, z);
                yield share < SHOULDER_SEAM ? shirt(x, y, z) : share < SLEEVE ? Parts.SHIRT : Parts.SKIN;
            }
            case FINGERS -> Objects.requireNonNull(digits[solid]).finger(x, y, z);
            case FOOT -> Objects.requireNonNull(digits[solid]).toe(x, y, z);
            case BARE -> Parts.SKIN;
        };
    }

    private double share(int solid, double x, double y, double z) {
        double[] local = new double[2];
        body.parts().get(solid).solid().local(x, y, z, local);
        return local[0];
    }

    private short neck(double x, double y, double z) {
        short hair = head(x, y, z);
        return hair == Parts.HAIR ? hair : shirt(x, y, z);
    }

    /** Round neckline. */
    private short shirt(double x, double y, double z) {
        double dx = x - collar.x();
        double dy = y - collar.y();
        double dz = z - collar.z();
        double front = along(thorax.axisX(), dx, dy, dz);
        double up = along(thorax.axisY(), dx, dy, dz);
        double right = along(thorax.axisZ(), dx, dy, dz);
        return up + .45 * front - 11 * right * right > -.022 ? Parts.SKIN : Parts.SHIRT;
    }

    private short head(double x, double y, double z) {
        double dx = x - skullBase.x();
        double dy = y - skullBase.y();
        double dz = z - skullBase.z();
        return Hair.covers(along(head.axisX(), dx, dy, dz), along(head.axisY(), dx, dy, dz)) ? Parts.HAIR : Parts.SKIN;
    }

    private static double along(Vec3 axis, double x, double y, double z) {
        return axis.x() * x + axis.y() * y + axis.z() * z;
    }

    @Override
    public float muscle(int solid, double x, double y, double z) {
        if (solid >= patches.length || patches[solid].length == 0) {
            return 0;
        }
        double[] local = new double[2];
        body.parts().get(solid).solid().local(x, y, z, local);
        return (float) Arrays.stream(patches[solid])
                .mapToDouble(patch -> patch.strength(local[0], local[1]))
                .max()
                .orElse(0);
    }
}
