package org.drillsheaf.figure.pose;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/** Takes the measures of one solved pose. */
final class Measuring {
    /** Solved angles and lateral places are not exact; less than this is none. Degrees and statures. */
    private static final double ADDUCTED = 1;

    private static final double SHIFTED = .012;
    private static final double LEVEL = 20;
    private static final Set<PropKind> FIRM =
            EnumSet.of(PropKind.WALL, PropKind.TABLE, PropKind.COUNTER, PropKind.CHAIR, PropKind.RAIL, PropKind.BED);
    private static final Set<PropKind> GROUND = EnumSet.of(
            PropKind.FLOOR,
            PropKind.STEP,
            PropKind.PAD,
            PropKind.BLOCK,
            PropKind.STOOL,
            PropKind.TOWEL,
            PropKind.CUSHION);
    private static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);

    private final SolvedPose pose;
    private final Skeleton body;
    private final RootPosture root;
    private final Touches touches;

    Measuring(SolvedPose pose) {
        this.pose = pose;
        this.body = pose.skeleton();
        this.root = pose.pose().root();
        this.touches = Touches.of(pose);
    }

    PoseMeasures measures() {
        double lumbar = angle(Motion.SPINE_LUMBAR);
        double thoracic = angle(Motion.SPINE_THORACIC);
        double forward = Math.max(lumbar + thoracic, Math.max(lumbar, thoracic));
        double back = -Math.min(lumbar + thoracic, Math.min(lumbar, thoracic));
        double hipExtension = most(s -> Math.max(0, -thighFromTrunkLine(s)));
        int stand = stand();
        return new PoseMeasures(
                most(this::hipFlexion),
                hipExtension,
                most(s -> Math.max(0, pose.angle(Motion.HIP_INT, s))),
                most(s -> Math.max(0, -pose.angle(Motion.HIP_INT, s))),
                most(s -> hipFlexion(s) < 20 ? Math.max(0, -pose.angle(Motion.HIP_INT, s)) : 0),
                SIDES.stream().anyMatch(this::isAcross) || isShifted(),
                carriesUpright() ? most(s -> isLoaded(s) ? pose.angle(Motion.KNEE_FLEX, s) : 0) : 0,
                Math.max(0, forward),
                Math.max(0, back),
                Math.abs(angle(Motion.SPINE_TURN)),
                Math.max(0, Math.max(angle(Motion.NECK_FLEX), angle(Motion.NECK_FLEX) + angle(Motion.HEAD_NOD))),
                Math.abs(angle(Motion.NECK_TURN)),
                headHeight() < chest().y() - .02,
                root.isLying()
                        && SIDES.stream().allMatch(s -> body.point("ankle", s).y() > chest().y() + .05),
                root.isLying() && body.point("pelvis").y() > chest().y() + .02,
                most(s -> pose.angle(Motion.KNEE_FLEX, s) < 30 ? hipFlexion(s) : 0),
                most(s -> MeasuredAngles.armToTrunkLine(body, s)),
                SIDES.stream().anyMatch(this::isArmOutTurned),
                wristLoad(),
                shoulderLoad(),
                isKneeling() && SIDES.stream().anyMatch(s -> touches.any("knee", s, GROUND)),
                isOnFloor(),
                isLevel(RootPosture.SUPINE),
                isLevel(RootPosture.PRONE),
                isLevel(RootPosture.SIDE_LYING_LEFT) || isLevel(RootPosture.SIDE_LYING_RIGHT),
                stand,
                (stand > 0) && hipExtension > 2,
                nothingEndsTheDepth());
    }

    private double angle(Motion motion) {
        return pose.angle(motion, Side.RIGHT);
    }

    private static double most(ToDoubleFunction<Side> measure) {
        return SIDES.stream().mapToDouble(measure).max().orElse(0);
    }

    private double hipFlexion(Side side) {
        return Math.max(0, Math.max(pose.angle(Motion.HIP_FLEX, side), thighFromTrunkLine(side)));
    }

    /** Forward angle of the thigh from the extended line shoulder to hip, seen from the side of the pelvis; degrees. */
    private double thighFromTrunkLine(Side side) {
        Rotation pelvis = body.frame("pelvis");
        Vec3 shoulders = BodyPoints.of(pose.body(), "shoulders");
        Vec3 trunk = pelvis.toLocal(body.point("pelvis").minus(shoulders));
        Vec3 thigh = pelvis.toLocal(body.point("knee", side).minus(body.point("hip", side)));
        double turn = StrictMath.atan2(thigh.x(), -thigh.y()) - StrictMath.atan2(trunk.x(), -trunk.y());
        double degrees = StrictMath.toDegrees(turn);
        return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
    }

    private boolean isAcross(Side side) {
        double s = side == Side.RIGHT ? 1 : -1;
        Rotation pelvis = body.frame("pelvis");
        Vec3 middle = body.point("pelvis");
        return pose.angle(Motion.HIP_ABD, side) < -ADDUCTED
                || s * pelvis.toLocal(body.point("knee", side).minus(middle)).z() < 0
                || s * pelvis.toLocal(body.point("ankle", side).minus(middle)).z() < 0;
    }

    /** The pelvis is not midway between the two places that carry it. */
    private boolean isShifted() {
        if (!isStanding() && !isKneeling() || !SIDES.stream().allMatch(this::isLoaded)) {
            return false;
        }
        Vec3 right = body.frame("pelvis").axisZ();
        Vec3 level = new Vec3(right.x(), 0, right.z()).unit();
        Vec3 between = support(Side.RIGHT).towards(support(Side.LEFT), .5);
        return Math.abs(body.point("pelvis").minus(between).dot(level)) > SHIFTED;
    }

    private Vec3 support(Side side) {
        boolean onKnee = isKneeling() && touches.any("knee", side, GROUND);
        return body.point(onKnee ? "knee" : "ankle", side);
    }

    private boolean isStanding() {
        return root == RootPosture.STANDING || root == RootPosture.LEANING;
    }

    private boolean isKneeling() {
        return root == RootPosture.KNEELING || root == RootPosture.HALF_KNEELING || root == RootPosture.HANDS_AND_KNEES;
    }

    private boolean carriesUpright() {
        return isStanding() || isKneeling();
    }

    private boolean isLoaded(Side side) {
        return touches.any("foot", side, GROUND) || isKneeling() && touches.any("knee", side, GROUND);
    }

    private double headHeight() {
        return body.point("head").plus(body.frame("head").apply(.002, .042, 0)).y();
    }

    /** Halfway between breastbone and back, at the middle of the chest's three links. */
    private Vec3 chest() {
        return body.point("tho2").plus(body.frame("tho2").apply(.003, .027, 0));
    }

    private boolean isArmOutTurned(Side side) {
        double s = side == Side.RIGHT ? 1 : -1;
        Vec3 arm = body.frame("thorax")
                .toLocal(body.point("elbow", side).minus(body.point("shoulder", side)))
                .unit();
        boolean sideways = s * arm.z() > Math.abs(arm.x());
        return sideways
                && MeasuredAngles.armToTrunkLine(body, side) >= 60
                && pose.angle(Motion.SHOULDER_INT, side) <= -20;
    }

    private boolean handOn(Side side, Set<PropKind> kinds) {
        return touches.any("hand", side, kinds);
    }

    private int wristLoad() {
        if (root.isLying() || root == RootPosture.SEATED) {
            boolean onFurniture = root == RootPosture.SEATED
                    && SIDES.stream()
                            .anyMatch(s -> handOn(s, EnumSet.of(PropKind.WALL, PropKind.TABLE, PropKind.COUNTER)));
            boolean carries = shoulderLoad() == 2 && SIDES.stream().noneMatch(s -> touches.any("forearm", s, GROUND));
            return carries ? 2 : onFurniture ? 1 : 0;
        }
        boolean onGround = SIDES.stream().anyMatch(s -> handOn(s, GROUND));
        boolean firm = SIDES.stream().anyMatch(s -> handOn(s, FIRM));
        boolean trunkLow = body.point("C7").y() - body.point("pelvis").y() < .2;
        if (root == RootPosture.HANDS_AND_KNEES && (onGround || firm) || onGround && trunkLow) {
            return 2;
        }
        return firm || onGround ? 1 : 0;
    }

    /** Lying on the side with the shoulder lifted off the ground by the arm under it. */
    private int shoulderLoad() {
        if (root != RootPosture.SIDE_LYING_LEFT && root != RootPosture.SIDE_LYING_RIGHT) {
            return 0;
        }
        for (Side side : SIDES) {
            boolean lower = body.point("shoulder", side).y()
                    < body.point("shoulder", side.opposite()).y();
            boolean lifted = body.point("shoulder", side).y() > .11;
            if (lower && lifted && (touches.any("forearm", side, GROUND) || handOn(side, GROUND))) {
                return 2;
            }
        }
        return 0;
    }

    private boolean isOnFloor() {
        if (!root.isLying() && !isKneeling()) {
            return false;
        }
        Set<PropKind> raised = EnumSet.of(PropKind.BED, PropKind.TABLE);
        boolean onBed = touches.any("trunk", raised)
                || touches.any("seat", raised)
                || isKneeling() && SIDES.stream().anyMatch(s -> touches.any("knee", s, raised));
        return !onBed || isKneeling() && SIDES.stream().anyMatch(s -> touches.any("knee", s, GROUND));
    }

    private boolean isLevel(RootPosture wanted) {
        Vec3 trunk = body.point("C7").minus(body.point("pelvis"));
        return root == wanted && Math.abs(90 - trunk.degreesTo(Vec3.Y)) <= LEVEL;
    }

    private int stand() {
        if (!isStanding() && root != RootPosture.HALF_KNEELING) {
            return 0;
        }
        if (!SIDES.stream().allMatch(this::isLoaded)) {
            return 3;
        }
        boolean held = SIDES.stream().anyMatch(s -> handOn(s, FIRM) || touches.any("forearm", s, FIRM))
                || touches.any("trunk", EnumSet.of(PropKind.WALL, PropKind.COUNTER, PropKind.TABLE));
        return held ? 1 : 2;
    }

    private boolean nothingEndsTheDepth() {
        Set<PropKind> ends = EnumSet.of(
                PropKind.CHAIR, PropKind.STOOL, PropKind.WALL, PropKind.BED, PropKind.COUNTER, PropKind.TABLE);
        return isStanding() && pose.props().stream().noneMatch(p -> ends.contains(p.kind()));
    }
}
