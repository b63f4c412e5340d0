package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Skeleton;

/**
 * Moves the unknowns of a pose, within the joints' limits and as little as possible, until its contacts are met. The
 * same pose gives the same result to the last bit.
 */
public final class PoseSolver {
    /** A contact counts as met when it is nearer than this, statures: 5 mm at 1.75 m. */
    public static final double MET = .003;
    /** A written angle that had to move farther is told to its author, degrees. */
    public static final double MOVED = 5;
    /** Stature for lengths in messages, centimetres. */
    private static final double STATURE = 175;

    private PoseSolver() {}

    public static SolvedPose solve(Pose pose) {
        return solve(pose, BodyBuild.AVERAGE);
    }

    /** @param build flesh changes where the contacts lie, so every build is solved for itself */
    public static SolvedPose solve(Pose pose, BodyBuild build) {
        SolvedPose solved = solveOnce(pose, build, FleshRoom.NOT_NEEDED);
        return build == BodyBuild.AVERAGE ? solved : withRoom(solved, build);
    }

    private static SolvedPose withRoom(SolvedPose written, BodyBuild build) {
        SolvedPose solved = written;
        for (int step = 0; step < ArmRoom.MOST_STEPS; step++) {
            Set<Side> crowded = Penetrations.armsInTrunk(solved);
            if (crowded.isEmpty()) {
                break;
            }
            solved = solveOnce(ArmRoom.wider(solved.pose(), crowded), build, FleshRoom.NOT_NEEDED);
        }
        FleshRoom room = FleshRoom.NOT_NEEDED;
        for (int round = 0; round < FleshRoom.MOST_ROUNDS; round++) {
            List<Penetration> tooDeep = Penetrations.tooDeep(solved);
            if (tooDeep.isEmpty()) {
                break;
            }
            room = room.and(tooDeep);
            SolvedPose roomier = solveOnce(room.yielding(solved), build, room);
            if (roomier.residual() > FleshRoom.MOST_MISSED) {
                break;
            }
            solved = roomier;
        }
        return solved;
    }

    private static SolvedPose solveOnce(Pose pose, BodyBuild build, FleshRoom room) {
        Scene scene = new Scene(pose.props());
        ContactEquations equations = new ContactEquations(pose, scene, build, room);
        double[] written = equations.written();
        double[] solved = solve(pose, equations, written);
        Body body = equations.body(solved);
        List<SolvedPose.MetContact> contacts = new ArrayList<>();
        for (Contact contact : pose.contacts()) {
            double off = equations.residual(contact, body).stream()
                    .mapToDouble(Math::abs)
                    .max()
                    .orElse(0);
            contacts.add(new SolvedPose.MetContact(contact, off * Math.min(1, ContactEquations.weight(contact))));
        }
        List<SolvedPose.MovedAngle> moved = moved(pose, written, solved, body.skeleton());
        List<Problem> problems = new ArrayList<>();
        contacts.stream().filter(c -> c.residual() > MET).forEach(c -> problems.add(unmet(pose, c, solved)));
        moved.forEach(m -> problems.add(Problem.warning(
                pose.file(),
                pose.line(),
                String.format(
                        Locale.ROOT,
                        "The contacts moved %s from %.1f to %.1f°",
                        m.unknown().word(),
                        m.written(),
                        m.solved()),
                String.format(
                        Locale.ROOT,
                        pose.solve().contains(m.unknown())
                                ? "Write %.0f, or free another angle under solve"
                                : "Write %.0f, or leave it out: a flat foot bends its ankle itself",
                        m.solved()))));
        problems.addAll(beyondLimits(pose, body));
        return new SolvedPose(
                pose, body, scene.place(body), contacts, moved, List.copyOf(problems), ghost(pose, body, build), false);
    }

    private static double[] solve(Pose pose, ContactEquations equations, double[] written) {
        if (written.length == 0 || pose.contacts().isEmpty()) {
            return written;
        }
        return new LeastSquares(
                        x -> equations.residuals(x, written),
                        equations.bounds(false),
                        equations.bounds(true),
                        equations.scale(1e-5, .01),
                        equations.scale(.1, 15))
                .solve(written);
    }

    private static Problem unmet(Pose pose, SolvedPose.MetContact contact, double[] solved) {
        String atLimit = atLimit(pose, solved)
                .map(word -> "; " + word + " is at its limit")
                .orElse("");
        String remedy = pose.solve().isEmpty()
                ? "Say under solve what may change, for example root.y"
                : "Change the angles, or free another one under solve";
        return Problem.error(
                pose.file(),
                contact.contact().line(),
                String.format(
                        Locale.ROOT,
                        "%s misses by %.1f cm at 175 cm stature%s",
                        words(contact.contact()),
                        contact.residual() * STATURE,
                        atLimit),
                remedy);
    }

    private static Optional<String> atLimit(Pose pose, double[] solved) {
        for (int i = 0; i < solved.length; i++) {
            if (pose.solve().get(i) instanceof Unknown.Angle angle) {
                JointLimits.Limit limit = JointLimits.of(angle.motion());
                if (solved[i] <= limit.least() + .01 || solved[i] >= limit.most() - .01) {
                    return Optional.of(String.format(Locale.ROOT, "%s, %.0f°,", angle.word(), solved[i]));
                }
            }
        }
        return Optional.empty();
    }

    private static String words(Contact contact) {
        if (contact instanceof Contact.Touch touch) {
            return "The contact of " + touch.region() + " with " + touch.on();
        }
        return contact instanceof Contact.Place place ? "The place of " + place.point() : "The flat foot";
    }

    private static List<SolvedPose.MovedAngle> moved(Pose pose, double[] written, double[] solved, Skeleton skeleton) {
        List<SolvedPose.MovedAngle> moved = new ArrayList<>();
        for (int i = 0; i < written.length; i++) {
            if (pose.solve().get(i) instanceof Unknown.Angle angle && Math.abs(solved[i] - written[i]) > MOVED) {
                moved.add(new SolvedPose.MovedAngle(angle, written[i], solved[i]));
            }
        }
        for (Contact contact : pose.contacts()) {
            if (contact instanceof Contact.Flat flat) {
                Stream.of(Motion.ANKLE_DORSI, Motion.ANKLE_INV)
                        .map(motion -> new Unknown.Angle(motion, Optional.of(flat.side())))
                        .filter(pose.written()::contains)
                        .map(ankle -> new SolvedPose.MovedAngle(
                                ankle,
                                pose.angles().get(ankle.motion(), flat.side()),
                                MeasuredAngles.of(skeleton, ankle.motion(), flat.side())))
                        .filter(ankle -> Math.abs(ankle.solved() - ankle.written()) > MOVED)
                        .forEach(moved::add);
            }
        }
        return List.copyOf(moved);
    }

    /** Angles that follow from contacts (a flat foot bends the ankle) may pass a limit too. */
    private static List<Problem> beyondLimits(Pose pose, Body body) {
        List<Problem> problems = new ArrayList<>();
        for (Side side : Side.values()) {
            for (Motion motion : List.of(Motion.ANKLE_DORSI, Motion.ANKLE_INV, Motion.SHOULDER_FLEX)) {
                double degrees = MeasuredAngles.of(body.skeleton(), motion, side);
                JointLimits.Limit limit = JointLimits.of(motion);
                if (!limit.allows(degrees)) {
                    problems.add(Problem.error(
                            pose.file(),
                            pose.line(),
                            String.format(
                                    Locale.ROOT,
                                    "The %s %s %s comes to %.0f°, beyond its limit of %.0f°",
                                    side.id(),
                                    motion.joint(),
                                    motion.movement(),
                                    degrees,
                                    degrees < limit.least() ? limit.least() : limit.most()),
                            "Change the angles near it, or let the foot leave the surface"));
                }
            }
        }
        return problems;
    }

    private static Optional<Body> ghost(Pose pose, Body body, BodyBuild build) {
        if (!(pose.ghost() instanceof Ghost.OfAngles ghost) || ghost.angles().isEmpty()) {
            return Optional.empty();
        }
        var posture = body.skeleton().posture();
        JointAngles angles = posture.angles();
        for (var entry : ghost.angles().entrySet()) {
            angles = JointReader.set(
                    angles, entry.getKey().motion(), entry.getKey().side(), entry.getValue());
        }
        return Optional.of(Body.of(
                org.drillsheaf.figure.body.Skeleton.of(
                        posture.withAngles(angles), body.skeleton().lengths()),
                build));
    }
}
