package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Vec3;

/** What can be said of trunk, hips, knees and arms of a pose, as keys of the tables of words. */
final class PoseStatements {
    /** Two sides that differ less are said together, degrees. */
    private static final double SAME = 10;

    private PoseStatements() {}

    /**
     * @param key for example {@code one.knee.straight} or {@code trunk.round}
     * @param side the side that the sentence names
     */
    record Statement(String key, Optional<Side> side) {
        static Statement of(String key) {
            return new Statement(key, Optional.empty());
        }

        /** The last part of the key. */
        String amount() {
            return key.substring(key.lastIndexOf('.') + 1);
        }
    }

    static List<Statement> trunk(SolvedPose pose) {
        List<Statement> all = new ArrayList<>();
        double bend = pose.angle(Motion.SPINE_LUMBAR, Side.RIGHT) + pose.angle(Motion.SPINE_THORACIC, Side.RIGHT);
        Vec3 up = pose.point("C7").minus(pose.point("pelvis")).unit();
        boolean upright = !pose.pose().root().isLying() && pose.pose().root() != RootPosture.HANDS_AND_KNEES;
        Vec3 ahead = pose.frame("pelvis").axisX();
        double lean = StrictMath.toDegrees(
                StrictMath.asin(Math.max(-1, Math.min(1, up.dot(new Vec3(ahead.x(), 0, ahead.z()).unit())))));
        if (upright && lean > 15) {
            all.add(Statement.of(lean > 45 ? "trunk.far" : "trunk.forward"));
        }
        if (bend > 22) {
            all.add(Statement.of("trunk.round"));
        } else if (bend < -8) {
            all.add(Statement.of("trunk.arched"));
        }
        double turn = pose.angle(Motion.SPINE_TURN, Side.RIGHT);
        if (Math.abs(turn) > 7) {
            all.add(new Statement("trunk.turned", Optional.of(turn > 0 ? Side.LEFT : Side.RIGHT)));
        }
        return all;
    }

    /** @param part {@code hip}, {@code knee} or {@code arm} */
    static Statement of(SolvedPose pose, String part, Side side) {
        String amount = part.equals("arm") ? arm(pose, side) : amount(pose.angle(motion(part), side));
        return new Statement("one." + part + "." + amount, Optional.of(side));
    }

    static boolean nearlyTheSame(SolvedPose pose, String part) {
        return !part.equals("arm")
                && Math.abs(pose.angle(motion(part), Side.RIGHT) - pose.angle(motion(part), Side.LEFT)) < SAME;
    }

    /** What is said of both sides at once, when they are alike. */
    static String together(SolvedPose pose, String part) {
        return part.equals("arm")
                ? arm(pose, Side.RIGHT)
                : amount((pose.angle(motion(part), Side.RIGHT) + pose.angle(motion(part), Side.LEFT)) / 2);
    }

    private static Motion motion(String part) {
        return part.equals("hip") ? Motion.HIP_FLEX : Motion.KNEE_FLEX;
    }

    private static String amount(double degrees) {
        if (degrees < 10) {
            return degrees < -5 ? "behind" : "straight";
        }
        return degrees < 40 ? "little" : degrees < 75 ? "half" : degrees < 105 ? "square" : "far";
    }

    private static String arm(SolvedPose pose, Side side) {
        double up = MeasuredAngles.armToTrunkLine(pose.skeleton(), side);
        Vec3 arm = pose.frame("thorax")
                .toLocal(pose.skeleton()
                        .point("elbow", side)
                        .minus(pose.skeleton().point("shoulder", side)));
        boolean bent = pose.angle(Motion.ELBOW_FLEX, side) > 55;
        if (up < 22) {
            return bent ? "bent" : "down";
        }
        if (up > 118) {
            return "up";
        }
        if (arm.x() < -.3 * arm.length()) {
            return "back";
        }
        boolean sideways = Math.abs(arm.z()) > Math.abs(arm.x());
        return sideways ? "side" : up < 62 ? "low" : "ahead";
    }
}
