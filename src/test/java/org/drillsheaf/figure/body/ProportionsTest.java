package org.drillsheaf.figure.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Lengths against Drillis R, Contini R 1966, as reproduced in Winter DA 2009, fig. 4.1. */
class ProportionsTest {
    private static final Proportions DRAWN = Proportions.STANDARD;
    private static final Skeleton STANDING = Skeleton.of(
            new Posture(new Vec3(0, DRAWN.hipHeight(), 0), Rotation.NONE, JointAngles.STRAIGHT, Map.of()), DRAWN);

    @Test
    void segmentsHaveThePublishedLengths() {
        assertThat(DRAWN.thigh()).isEqualTo(.245);
        assertThat(DRAWN.shank()).isEqualTo(.246);
        assertThat(DRAWN.ankleHeight()).isEqualTo(.039);
        assertThat(DRAWN.upperArm()).isEqualTo(.186);
        assertThat(DRAWN.forearm()).isEqualTo(.146);
    }

    /** Published heights .039, .285 and .530, and their differences. */
    @Test
    void landmarksOfTheStandingFigureHaveThePublishedHeights() {
        assertThat(STANDING.point("ankle.R").y()).isCloseTo(.039, within(1e-9));
        assertThat(STANDING.point("knee.R").y()).isCloseTo(.285, within(1e-9));
        assertThat(STANDING.point("hip.R").y()).isCloseTo(.530, within(1e-9));
        assertThat(STANDING.point("heel.R").y()).isCloseTo(0, within(1e-9));
        assertThat(STANDING.point("vertex").y()).isCloseTo(1, within(.003));
    }

    @ParameterizedTest
    @EnumSource(Proportions.Departure.class)
    void everyDepartureFromTheTableIsNamedWithItsReason(Proportions.Departure departure) {
        assertThat(departure.reason()).hasSizeGreaterThan(40);
        assertThat(departure.drawn()).isNotEqualTo(departure.published());
    }

    /** Published: hand .108, foot .152, hip to shoulder .288. */
    @Test
    void departuresOfLengthAreSmall() {
        assertThat(DRAWN.hand()).isCloseTo(.108, within(.005));
        assertThat(DRAWN.foot()).isCloseTo(.152, within(.003));
        double shoulder =
                STANDING.point("shoulder.R").y() - STANDING.point("hip.R").y();
        assertThat(shoulder).isCloseTo(DRAWN.hipToShoulder(), within(.003));
        assertThat(shoulder).isCloseTo(.288, within(.015));
    }

    /** Heights of chin .870 and eye .936 are published; the drawn head is fitted by eye. */
    @Test
    void theHeadSitsAtThePublishedHeight() {
        Vec3 head = STANDING.point("head");
        double eye = head.plus(STANDING.frame("head").apply(.06, .0245, 0)).y();

        assertThat(eye).isCloseTo(.936, within(.012));
    }
}
