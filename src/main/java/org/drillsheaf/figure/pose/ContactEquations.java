package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Posture;
import org.drillsheaf.figure.body.Proportions;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/** The unknowns of a pose and how far its contacts are from being met. */
final class ContactEquations {
    /** Pull of a solved angle towards the written one: residual in statures a degree. */
    private static final double PULL = 2e-5;

    private final Pose pose;
    private final Scene scene;
    private final BodyBuild build;
    private final FleshRoom room;
    private final Vec3 start;
    private final Map<Side, Vec3> soles = new EnumMap<>(Side.class);

    ContactEquations(Pose pose, Scene scene, BodyBuild build, FleshRoom room) {
        this.pose = pose;
        this.room = room;
        this.scene = scene;
        this.build = build;
        this.start = new Vec3(0, pose.root().startHeight(), 0);
        for (Contact contact : pose.contacts()) {
            if (contact instanceof Contact.Flat flat) {
                scene.plane(flat.plane()).ifPresent(plane -> soles.put(flat.side(), plane.normal()));
            }
        }
    }

    double[] written() {
        return pose.solve().stream().mapToDouble(this::written).toArray();
    }

    private double written(Unknown unknown) {
        if (unknown instanceof Unknown.Root root) {
            return switch (root.axis()) {
                case X -> start.x();
                case Y -> start.y();
                case Z -> start.z();
            };
        }
        if (unknown instanceof Unknown.Angle angle) {
            return pose.angles().get(angle.motion(), angle.side().orElse(Side.RIGHT));
        }
        return pose.heading();
    }

    /** Lower (or upper) bounds of the unknowns. */
    double[] bounds(boolean upper) {
        return pose.solve().stream()
                .mapToDouble(unknown -> {
                    if (unknown instanceof Unknown.Angle angle) {
                        JointLimits.Limit limit = JointLimits.of(angle.motion());
                        return upper ? limit.most() : limit.least();
                    }
                    double far = unknown instanceof Unknown.Root ? 10 : 720;
                    return upper ? far : -far;
                })
                .toArray();
    }

    /** One number a kind of unknown: for lengths and for angles. */
    double[] scale(double length, double degrees) {
        return pose.solve().stream()
                .mapToDouble(u -> u instanceof Unknown.Root ? length : degrees)
                .toArray();
    }

    Posture posture(double[] x) {
        Vec3 root = start;
        double heading = pose.heading();
        JointAngles angles = pose.angles();
        for (int i = 0; i < x.length; i++) {
            Unknown unknown = pose.solve().get(i);
            if (unknown instanceof Unknown.Root moved) {
                root = switch (moved.axis()) {
                    case X -> new Vec3(x[i], root.y(), root.z());
                    case Y -> new Vec3(root.x(), x[i], root.z());
                    case Z -> new Vec3(root.x(), root.y(), x[i]);
                };
            } else if (unknown instanceof Unknown.Angle angle) {
                Optional<Side> side = angle.side();
                angles = side.isPresent()
                        ? angles.with(angle.motion(), side.get(), x[i])
                        : angles.with(angle.motion(), x[i]);
            } else {
                heading = x[i];
            }
        }
        Rotation turn = Rotation.aboutY(heading).then(pose.root().turn());
        return new Posture(root, turn, angles, soles);
    }

    Body body(double[] x) {
        return Body.of(Skeleton.of(posture(x), Proportions.STANDARD), build);
    }

    /** All weighted residuals, the room that flesh lacks, then the pulls towards the written angles. */
    double[] residuals(double[] x, double[] written) {
        Body body = body(x);
        List<Double> all = new ArrayList<>();
        for (Contact contact : pose.contacts()) {
            double weight = weight(contact);
            residual(contact, body).forEach(r -> all.add(weight * r));
        }
        all.addAll(room.lacking(body, scene));
        for (int i = 0; i < x.length; i++) {
            all.add(pose.solve().get(i) instanceof Unknown.Root ? 0 : PULL * (x[i] - written[i]));
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    static double weight(Contact contact) {
        if (contact instanceof Contact.Touch touch) {
            return touch.weight();
        }
        return contact instanceof Contact.Place place ? place.weight() : 1;
    }

    /** How far a contact is from being met, statures, one number an axis. */
    List<Double> residual(Contact contact, Body body) {
        if (contact instanceof Contact.Touch touch) {
            return List.of(scene.gap(body, touch.region(), touch.on()) + touch.press());
        }
        if (contact instanceof Contact.Place place) {
            Vec3 point = BodyPoints.of(body, place.point());
            if (place.target() instanceof Contact.Target.Body to) {
                Vec3 off = point.minus(BodyPoints.of(body, to.point()).plus(to.offset()));
                return List.of(off.x(), off.y(), off.z());
            }
            Contact.Target.Room room = (Contact.Target.Room) place.target();
            List<Double> off = new ArrayList<>();
            room.x().ifPresent(v -> off.add(point.x() - v));
            room.y().ifPresent(v -> off.add(point.y() - v));
            room.z().ifPresent(v -> off.add(point.z() - v));
            return off;
        }
        return List.of();
    }
}
