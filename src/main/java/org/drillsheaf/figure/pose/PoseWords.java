package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Vec3;

/**
 * Says in a few plain sentences what a picture shows, for those who cannot see it. The words come from a table by key, so
 * that another language only needs another table; a key that is missing there is said in English.
 */
public final class PoseWords {
    private static final double SAME = 10;
    private static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);

    private final Map<String, String> table;

    public PoseWords(Map<String, String> table) {
        this.table = Map.copyOf(table);
    }

    public static PoseWords english() {
        return new PoseWords(Map.of());
    }

    /** The keys of a table with their English words; {@code {side}} stands for the words of {@code side.…}. */
    public static Map<String, String> englishTable() {
        return EnglishPoseWords.TABLE;
    }

    public String describe(SolvedPose pose) {
        List<String> sentences = new ArrayList<>();
        Touches touches = Touches.of(pose);
        sentences.add(root(pose, touches));
        trunk(pose, sentences);
        legs(pose, sentences);
        arms(pose, sentences);
        return String.join(" ", sentences);
    }

    private String say(String key) {
        String word = table.get(key);
        return word != null ? word : EnglishPoseWords.TABLE.getOrDefault(key, key);
    }

    private String sided(String key, Side side) {
        return say(key).replace("{side}", say("side." + side.id()));
    }

    private String root(SolvedPose pose, Touches touches) {
        RootPosture root = pose.pose().root();
        Side named = root == RootPosture.SIDE_LYING_LEFT ? Side.LEFT : Side.RIGHT;
        Side side = pose.isMirrored() ? named.opposite() : named;
        String posture =
                switch (root) {
                    case SIDE_LYING_LEFT, SIDE_LYING_RIGHT -> sided("root.side-lying", side);
                    case HALF_KNEELING -> sided("root.half-kneeling", side);
                    default -> say("root." + root.id());
                };
        List<String> with = new ArrayList<>();
        with.add(posture);
        place("trunk", EnumSet.of(PropKind.TABLE, PropKind.BED, PropKind.WALL), touches, with);
        if (root == RootPosture.SEATED) {
            place("seat", EnumSet.of(PropKind.CHAIR, PropKind.STOOL, PropKind.TABLE, PropKind.BED), touches, with);
        }
        for (String limb : List.of("hand", "forearm", "foot")) {
            Set<PropKind> kinds = EnumSet.of(
                    PropKind.WALL, PropKind.TABLE, PropKind.COUNTER, PropKind.CHAIR, PropKind.STEP, PropKind.STOOL);
            limbs(limb, kinds, touches, with);
        }
        return String.join(", ", with) + ".";
    }

    private void place(String region, Set<PropKind> kinds, Touches touches, List<String> to) {
        touches.of(region).stream()
                .filter(kinds::contains)
                .findFirst()
                .ifPresent(kind -> to.add(say("on." + region).replace("{thing}", say("thing." + kind.id()))));
    }

    private void limbs(String limb, Set<PropKind> kinds, Touches touches, List<String> to) {
        for (PropKind kind : kinds) {
            boolean right = touches.of(limb + ".R").contains(kind);
            boolean left = touches.of(limb + ".L").contains(kind);
            if (right || left) {
                String key = right && left ? "on.both." + limb : "on.one." + limb;
                to.add(sided(key, right ? Side.RIGHT : Side.LEFT).replace("{thing}", say("thing." + kind.id())));
                return;
            }
        }
    }

    private void trunk(SolvedPose pose, List<String> to) {
        double bend = pose.angle(Motion.SPINE_LUMBAR, Side.RIGHT) + pose.angle(Motion.SPINE_THORACIC, Side.RIGHT);
        Vec3 up = pose.point("C7").minus(pose.point("pelvis")).unit();
        boolean upright = !pose.pose().root().isLying() && pose.pose().root() != RootPosture.HANDS_AND_KNEES;
        Vec3 ahead = pose.frame("pelvis").axisX();
        double lean = StrictMath.toDegrees(
                StrictMath.asin(Math.max(-1, Math.min(1, up.dot(new Vec3(ahead.x(), 0, ahead.z()).unit())))));
        if (upright && lean > 15) {
            to.add(say(lean > 45 ? "trunk.far" : "trunk.forward"));
        }
        if (bend > 22) {
            to.add(say("trunk.round"));
        } else if (bend < -8) {
            to.add(say("trunk.arched"));
        }
        double turn = pose.angle(Motion.SPINE_TURN, Side.RIGHT);
        if (Math.abs(turn) > 7) {
            to.add(sided("trunk.turned", turn > 0 ? Side.LEFT : Side.RIGHT));
        }
    }

    private void legs(SolvedPose pose, List<String> to) {
        both(pose, Motion.HIP_FLEX, "hip", to);
        both(pose, Motion.KNEE_FLEX, "knee", to);
    }

    private void both(SolvedPose pose, Motion motion, String joint, List<String> to) {
        double right = pose.angle(motion, Side.RIGHT);
        double left = pose.angle(motion, Side.LEFT);
        if (Math.abs(right - left) < SAME) {
            to.add(say("both." + joint + "." + amount((right + left) / 2)));
            return;
        }
        for (Side side : SIDES) {
            to.add(sided("one." + joint + "." + amount(pose.angle(motion, side)), side));
        }
    }

    private static String amount(double degrees) {
        if (degrees < 10) {
            return degrees < -5 ? "behind" : "straight";
        }
        return degrees < 40 ? "little" : degrees < 75 ? "half" : degrees < 105 ? "square" : "far";
    }

    private void arms(SolvedPose pose, List<String> to) {
        String right = arm(pose, Side.RIGHT);
        String left = arm(pose, Side.LEFT);
        if (right.equals(left)) {
            to.add(say("both.arm." + right));
        } else {
            to.add(sided("one.arm." + right, Side.RIGHT));
            to.add(sided("one.arm." + left, Side.LEFT));
        }
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
