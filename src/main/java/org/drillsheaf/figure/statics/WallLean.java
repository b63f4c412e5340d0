package org.drillsheaf.figure.statics;

import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.PlacedProp;
import org.drillsheaf.figure.pose.Plane;
import org.drillsheaf.figure.pose.PropKind;
import org.drillsheaf.figure.pose.SolvedPose;

/**
 * How a person who leans with the back against a wall shares the load between heels and forefeet.
 *
 * <p>Free body: weight W at the centre of mass, x_c from the wall; one push N of the wall at the height y_w where the
 * back touches it, with wall friction f = mu N upwards; floor force at the centre of pressure x_cop. Moments about the
 * foot of the wall: x_cop (W − f) = W x_c + N y_w. Heel share h = (x_b − x_cop) / (x_b − x_h) with the heel pad at x_h
 * and the ball of the foot at x_b. Both feet side by side, the body at rest, the floor rough enough for a push of N.
 * How hard the person leans is free, so results are ranges, not values.
 *
 * @param centreFromWall x_c; {@code contactHeight} y_w; {@code heelPad} x_h; {@code ankle}; {@code ball} x_b; all in
 *     statures from the wall or the floor
 */
public record WallLean(double centreFromWall, double contactHeight, double heelPad, double ankle, double ball) {
    /** The middle of the heel pad lies this far ahead of the heel point, statures (our own). */
    private static final double PAD = .019;

    /** Empty when the pose leans against no wall that faces forwards or backwards. */
    public static Optional<WallLean> of(SolvedPose pose) {
        for (PlacedProp prop : pose.props()) {
            if (prop.kind() != PropKind.WALL) {
                continue;
            }
            Plane wall = prop.planes().values().iterator().next();
            Body body = pose.body();
            double nearest = body.part("trunk").orElseThrow().solid().lowest(wall.normal(), 0, 1)
                    - wall.point().dot(wall.normal());
            if (Math.abs(wall.normal().x()) > .9 && nearest < .012) {
                return Optional.of(lean(pose, wall, nearest));
            }
        }
        return Optional.empty();
    }

    private static WallLean lean(SolvedPose pose, Plane wall, double nearest) {
        double[] sum = {0, 0};
        pose.body().part("trunk").orElseThrow().solid().samples(0, 1, p -> {
            if (wall.height(p) < nearest + .004) {
                sum[0] += p.y();
                sum[1]++;
            }
        });
        return new WallLean(
                wall.height(CentreOfMass.of(pose.skeleton())),
                sum[0] / sum[1],
                mean(pose, wall, "heel") + PAD,
                mean(pose, wall, "ankle"),
                mean(pose, wall, "ball"));
    }

    private static double mean(SolvedPose pose, Plane wall, String joint) {
        Vec3 right = pose.skeleton().point(joint, Side.RIGHT);
        Vec3 left = pose.skeleton().point(joint, Side.LEFT);
        return (wall.height(right) + wall.height(left)) / 2;
    }

    /** Centre of pressure from the wall for a share of the floor load on the heels, statures. */
    public double centreOfPressure(double heelShare) {
        return ball - heelShare * (ball - heelPad);
    }

    /**
     * The push of the wall that goes with a heel share, fraction of body weight; negative when the wall would have to
     * pull.
     *
     * @param wallFriction coefficient of friction that is used up at the wall; 0 for a smooth wall
     */
    public double push(double heelShare, double wallFriction) {
        double cop = centreOfPressure(heelShare);
        return (cop - centreFromWall) / (contactHeight + wallFriction * cop);
    }

    /** The heel share that goes with a push of the wall, fraction of body weight. */
    public double heelShare(double push, double wallFriction) {
        double cop = (centreFromWall + push * contactHeight) / (1 - wallFriction * push);
        return (ball - cop) / (ball - heelPad);
    }

    /** The heel share at which the calves rest: the floor force passes through the ankles. */
    public double restingHeelShare() {
        return (ball - ankle) / (ball - heelPad);
    }

    /**
     * Moment at both ankles together, in body weights times statures; positive = the calves work.
     *
     * @param wallFriction as for {@link #push}
     */
    public double ankleMoment(double heelShare, double wallFriction) {
        double push = push(heelShare, wallFriction);
        return (1 - wallFriction * push) * (centreOfPressure(heelShare) - ankle);
    }

    /**
     * Whether at least this share of the load can rest on the heels with a push the floor can hold.
     *
     * @param friction of the floor; the push needs about that much
     */
    public boolean canRestOnHeels(double heelShare, double friction) {
        double push = push(heelShare, 0);
        return push >= 0 && push <= friction;
    }
}
