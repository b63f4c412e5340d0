package org.drillsheaf.drill.safety;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.Contact;
import org.drillsheaf.figure.pose.PlacedProp;
import org.drillsheaf.figure.pose.PropKind;
import org.drillsheaf.figure.pose.RootPosture;
import org.drillsheaf.figure.pose.SolvedPose;

/** What carries the body in one solved keyframe. Lengths are statures; their limits are the house's own. */
record KeyframeSupport(SolvedPose pose) {
    private static final Set<PropKind> FIRM =
            EnumSet.of(PropKind.WALL, PropKind.TABLE, PropKind.COUNTER, PropKind.RAIL, PropKind.CHAIR, PropKind.BED);
    private static final Set<PropKind> RAISED = EnumSet.of(PropKind.BED, PropKind.TABLE);
    /** As near as this a hand rests on a thing: half a hand's thickness and a little. */
    private static final double TOUCHES = .03;
    /** As near as this a foot is on the floor: the sole of a shoe. */
    private static final double ON_GROUND = .022;

    private static final double HEAD_LOW = .02;
    private static final double FEET_HIGH = .05;
    private static final double HIPS_HIGH = .02;
    /** The chest's section reaches so much farther to the front than to the back of its spine line, halved. */
    private static final double CHEST_AHEAD = .003;
    /** Sideways slide of the pelvis over the feet or knees: 2.5 cm at 172 cm. */
    private static final double SLIDE = .015;

    RootPosture root() {
        return pose.pose().root();
    }

    boolean standsOnFeet() {
        return root() == RootPosture.STANDING || root() == RootPosture.LEANING;
    }

    boolean kneels() {
        return root() == RootPosture.KNEELING
                || root() == RootPosture.HALF_KNEELING
                || root() == RootPosture.HANDS_AND_KNEES;
    }

    /** Lying or kneeling with nothing like a bed under it. */
    boolean isOnFloor() {
        boolean raised = pose.props().stream().anyMatch(p -> RAISED.contains(p.kind()) && carries(p));
        return (root().isLying() || kneels()) && !raised;
    }

    /** A bed or table whose top lies under the hips. */
    private boolean carries(PlacedProp prop) {
        Vec3 hips = body().point("pelvis");
        return prop.solids().stream().anyMatch(s -> s.distance(hips) < .12);
    }

    boolean isFlatOnBack() {
        Vec3 front = body().frame("thorax").axisX();
        return root() == RootPosture.SUPINE && trunkSlope() <= 20 && front.y() > .5;
    }

    boolean isFaceDown() {
        return root() == RootPosture.PRONE;
    }

    boolean isOnSide() {
        return root() == RootPosture.SIDE_LYING_LEFT || root() == RootPosture.SIDE_LYING_RIGHT;
    }

    /** Degrees between the trunk and the level. */
    private double trunkSlope() {
        Vec3 up = body().point("C7").minus(body().point("pelvis")).unit();
        return StrictMath.toDegrees(StrictMath.asin(StrictMath.abs(up.y())));
    }

    boolean isHeadLow() {
        return body().point("head").y() < middleOfChest() - HEAD_LOW;
    }

    boolean areFeetHigh() {
        double lower = Math.min(
                body().point("ankle", Side.LEFT).y(),
                body().point("ankle", Side.RIGHT).y());
        return root().isLying() && lower > middleOfChest() + FEET_HIGH;
    }

    boolean areHipsHigh() {
        double lower = Math.min(
                body().point("hip", Side.LEFT).y(),
                body().point("hip", Side.RIGHT).y());
        return root().isLying() && lower > middleOfChest() + HIPS_HIGH;
    }

    private double middleOfChest() {
        Vec3 spine = body().point("tho1").towards(body().point("C7"), .5);
        return spine.plus(body().frame("thorax").axisX().times(CHEST_AHEAD)).y();
    }

    boolean isFootDown(Side side) {
        double lowest = Math.min(heightOverGround("heel", side), heightOverGround("ball", side));
        return lowest < ON_GROUND;
    }

    private double heightOverGround(String point, Side side) {
        Vec3 at = body().point(point, side);
        double height = at.y();
        for (PlacedProp prop : pose.props()) {
            if (prop.kind() == PropKind.STEP || prop.kind() == PropKind.STOOL) {
                double above = prop.solids().stream()
                        .mapToDouble(s -> s.distance(at))
                        .min()
                        .orElse(height);
                height = Math.min(height, above);
            }
        }
        return height;
    }

    /** Whether the leg carries weight by its foot or its knee. */
    boolean isLoaded(Side side) {
        if (root() == RootPosture.KNEELING || root() == RootPosture.HANDS_AND_KNEES) {
            return true;
        }
        return root() == RootPosture.HALF_KNEELING || (standsOnFeet() && isFootDown(side));
    }

    /** A hand, forearm or the back rests on something firm. */
    boolean isHeld() {
        return handsHold() || root() == RootPosture.LEANING || touches(List.of("back", "trunk", "sacrum"));
    }

    /** A hand or forearm rests on something firm. */
    boolean handsHold() {
        for (Side side : Side.values()) {
            for (String point : List.of("palm", "knuckle", "tip", "wrist", "elbow")) {
                Vec3 at = body().point(point, side);
                for (PlacedProp prop : pose.props()) {
                    boolean near = prop.solids().stream().anyMatch(s -> s.distance(at) < TOUCHES);
                    if (FIRM.contains(prop.kind()) && near) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Hands-and-knees carried by the hands; by the forearms when only those touch. */
    boolean handsCarryTheTrunk() {
        if (root() != RootPosture.HANDS_AND_KNEES) {
            return false;
        }
        return touches(List.of("hand", "palm", "fingers")) || !touches(List.of("forearm", "elbow"));
    }

    boolean armCarriesTheSide() {
        boolean seatDown = touches(List.of("hip", "pelvis", "trunk", "seat", "thigh"));
        return isOnSide() && touches(List.of("forearm", "elbow", "hand", "palm")) && !seatDown;
    }

    private boolean touches(List<String> regions) {
        return pose.pose().contacts().stream()
                .filter(Contact.Touch.class::isInstance)
                .map(c -> ((Contact.Touch) c).region().replaceFirst("\\.[RL]$", ""))
                .anyMatch(region -> regions.stream().anyMatch(region::startsWith));
    }

    /** Signed sideways place of the pelvis over the middle of what carries it; positive to the right. */
    double pelvisOverSupport() {
        String joint = root() == RootPosture.KNEELING ? "knee" : "ankle";
        double middle = body().point(joint, Side.LEFT)
                .towards(body().point(joint, Side.RIGHT), .5)
                .z();
        return body().point("pelvis").z() - middle;
    }

    boolean slidesSideways() {
        boolean upright = standsOnFeet() || root() == RootPosture.KNEELING;
        return upright && StrictMath.abs(pelvisOverSupport()) > SLIDE;
    }

    private Skeleton body() {
        return pose.skeleton();
    }
}
