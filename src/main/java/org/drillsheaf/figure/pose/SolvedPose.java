package org.drillsheaf.figure.pose;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/**
 * A pose whose contacts have been solved: what the picture, the numbers in the text and the safety rules read.
 *
 * @param pose as written
 * @param body the placed body
 * @param props everything in the scene, in the order it was written
 * @param contacts how well each contact is met
 * @param moved written angles that the contacts moved by more than {@link PoseSolver#MOVED}
 * @param problems what is wrong with the pose; empty when it is sound
 * @param ghostBody the light outline of the start posture
 * @param isMirrored whether left and right are exchanged against what the author wrote
 */
public record SolvedPose(
        Pose pose,
        Body body,
        List<PlacedProp> props,
        List<MetContact> contacts,
        List<MovedAngle> moved,
        List<Problem> problems,
        Optional<Body> ghostBody,
        boolean isMirrored) {

    /** A contact and how far it is from being met, statures, by its weight if that is less than 1. */
    public record MetContact(Contact contact, double residual) {}

    /** A written angle that had to move; degrees. */
    public record MovedAngle(Unknown.Angle unknown, double written, double solved) {}

    public Skeleton skeleton() {
        return body.skeleton();
    }

    /** The largest miss of any contact, statures; a contact of less weight than 1 counts by its weight. */
    public double residual() {
        return contacts.stream().mapToDouble(MetContact::residual).max().orElse(0);
    }

    /**
     * A joint's angle in clinical degrees (0 = straight), as a goniometer would read it.
     *
     * @param joint word of the joint in pose files, {@code movement} likewise
     * @throws IllegalArgumentException when the joint has no such movement
     */
    public double angle(String joint, Side side, String movement) {
        return angle(
                Motion.of(joint, movement)
                        .orElseThrow(() -> new IllegalArgumentException("no movement " + joint + " " + movement)),
                side);
    }

    public double angle(Motion motion, Side side) {
        return switch (motion) {
            case ANKLE_DORSI, ANKLE_INV, SHOULDER_FLEX, SHOULDER_FROM_TRUNK, SHOULDER_ABD ->
                MeasuredAngles.of(skeleton(), motion, side);
            default -> skeleton().posture().angles().get(motion, side);
        };
    }

    /** The same angle read back from the joint points. */
    public double measuredAngle(Motion motion, Side side) {
        return MeasuredAngles.of(skeleton(), motion, side);
    }

    /**
     * A point of the body: joint, pair or skin ({@code trunk@0.42,180}).
     *
     * @throws IllegalArgumentException when there is none of that name
     */
    public Vec3 point(String name) {
        return BodyPoints.of(body, name);
    }

    public Optional<Vec3> findPoint(String name) {
        return BodyPoints.find(body, name);
    }

    /** Frame of a segment, for example {@code head} or {@code thorax}. */
    public Rotation frame(String name) {
        return skeleton().frame(name);
    }

    public List<String> feel() {
        return isMirrored ? pose.feel().stream().map(MirroredNames::of).toList() : pose.feel();
    }

    public List<Mark> marks() {
        return isMirrored ? pose.marks().stream().map(Mark::mirrored).toList() : pose.marks();
    }

    /** The figure of the ghost in the same scene. */
    public Optional<SolvedPose> ghost() {
        return ghostBody.map(ghost ->
                new SolvedPose(pose, ghost, props, List.of(), List.of(), List.of(), Optional.empty(), isMirrored));
    }

    /** The same figure with another ghost, for example the start keyframe. */
    public SolvedPose withGhost(Body ghost) {
        return new SolvedPose(pose, body, props, contacts, moved, problems, Optional.of(ghost), isMirrored);
    }

    /** Left and right exchanged: the other side of a sided drill. */
    public SolvedPose mirrored() {
        return new SolvedPose(
                pose,
                mirrored(body),
                props.stream().map(PlacedProp::mirrored).toList(),
                contacts,
                moved,
                problems,
                ghostBody.map(SolvedPose::mirrored),
                !isMirrored);
    }

    private static Body mirrored(Body body) {
        BodyBuild build = body.build();
        return Body.of(
                Skeleton.of(
                        body.skeleton().posture().mirrored(), body.skeleton().lengths()),
                build);
    }
}
