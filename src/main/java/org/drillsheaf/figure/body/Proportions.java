package org.drillsheaf.figure.body;

/**
 * Segment lengths as fractions of stature.
 *
 * <p>Source: Drillis R, Contini R, Body Segment Parameters, Tech. Rep. 1166-03, New York University 1966, as reproduced
 * in Winter DA, Biomechanics and Motor Control of Human Movement, 4th ed. 2009, fig. 4.1. Where the drawn figure needs
 * another length than that table gives, {@link Departure} names it with the reason.
 *
 * @param thigh hip centre to knee centre
 * @param shank knee centre to ankle centre
 * @param ankleHeight ankle centre above the sole
 * @param foot heel to toe tip; {@code heelBehindAnkle} of it lie behind the ankle
 * @param ballAheadOfAnkle ankle to the ball of the foot
 * @param hipHalfBreadth middle to hip joint centre
 * @param hipToShoulder height of the shoulder centres above the hip centres
 * @param shoulderHalfBreadth middle to shoulder joint centre
 * @param palm wrist to knuckles; {@code fingers} knuckles to finger tips
 */
public record Proportions(
        double thigh,
        double shank,
        double ankleHeight,
        double foot,
        double heelBehindAnkle,
        double ballAheadOfAnkle,
        double hipHalfBreadth,
        double hipToShoulder,
        double shoulderHalfBreadth,
        double upperArm,
        double forearm,
        double palm,
        double fingers) {

    /** The figure that is drawn. */
    public static final Proportions STANDARD =
            new Proportions(.245, .246, .039, .150, .0465, .062, .0505, .276, .107, .186, .146, .054, .050);

    /** A published length from which the drawn figure departs. */
    public enum Departure {
        HAND(
                .108,
                "the table measures to the tip of the longest finger; the drawn mitten hand ends at the mean of the tips"),
        FOOT(.152, "the rounded heel and toe caps of the drawn foot are placed 1 mm inside the skin at each end"),
        HIP_TO_SHOULDER(
                .288,
                "the table's heights are of trochanter and acromion landmarks; the joint centres of the drawn arm lie lower"),
        HIP_BREADTH(.191, "the table gives the outer width of the hips, not the distance of the joint centres"),
        SHOULDER_BREADTH(
                .259, "the table gives the outer width of the shoulders, not the distance of the joint centres");

        private final double published;
        private final String reason;

        Departure(double published, String reason) {
            this.published = published;
            this.reason = reason;
        }

        /** The length in the published table, fraction of stature. */
        public double published() {
            return published;
        }

        public String reason() {
            return reason;
        }

        /** The length that the drawn figure has instead. */
        public double drawn() {
            return switch (this) {
                case HAND -> STANDARD.hand();
                case FOOT -> STANDARD.foot();
                case HIP_TO_SHOULDER -> STANDARD.hipToShoulder();
                case HIP_BREADTH -> 2 * STANDARD.hipHalfBreadth();
                case SHOULDER_BREADTH -> 2 * STANDARD.shoulderHalfBreadth();
            };
        }
    }

    /** Wrist to finger tips. */
    public double hand() {
        return palm + fingers;
    }

    /** Hip centre above the sole of the standing figure. */
    public double hipHeight() {
        return thigh + shank + ankleHeight;
    }

    /** Ankle to the tip of the toes along the sole. */
    public double toeAheadOfAnkle() {
        return foot - heelBehindAnkle;
    }
}
