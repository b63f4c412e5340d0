package org.drillsheaf.figure.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drillsheaf.figure.statics.SegmentMass.*;

import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.Posture;
import org.drillsheaf.figure.body.Proportions;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.PoseSolver;
import org.drillsheaf.figure.pose.Poses;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Published sums of the mass table, centres of known poses, and the balance of the lean against a wall. */
class StaticsTest {
    /** Heels .152 H from the wall: the pose for which the numbers below were worked out by hand. */
    private static final SolvedPose LEANING = PoseSolver.solve(
            Poses.of(
                    """
            root: leaning
            joints:
              pelvis:   {tilt: -14}
              spine:    {lumbar: 14, thoracic: 34}
              neck:     {flex: -8}
              head:     {nod: -16}
              hip:      {flex: 20, abd: 4}
              knee:     {flex: 26}
              scapula:  {protract: 22}
              shoulder: {from-trunk: 50, abd: 4, int: -20}
              elbow:    {flex: 6, pron: -75}
            props: [{wall: {x: 0, faces: +x}}, {floor: {}}]
            contacts:
              - {touch: low-back, plane: wall}
              - {flat: feet, plane: floor}
              - {touch: feet, plane: floor}
              - {place: heel.R, x: 0.152}
            solve: [root.x, root.y, hip.flex]
            """));

    private static final WallLean LEAN = WallLean.of(LEANING).orElseThrow();

    /** Winter DA 2009, table 4.1 (Dempster): the printed masses of compound segments. */
    @Test
    void theMassTableCloses() {
        assertThat(whole()).isCloseTo(1, within(1e-9));
        assertThat(of(HAND, FOREARM)).isCloseTo(.022, within(1e-9));
        assertThat(of(HAND, FOREARM, UPPER_ARM)).isCloseTo(.050, within(1e-9));
        assertThat(of(FOOT, SHANK)).isCloseTo(.061, within(1e-9));
        assertThat(of(FOOT, SHANK, THIGH)).isCloseTo(.161, within(1e-9));
        assertThat(of(THORAX, ABDOMEN, PELVIS)).isCloseTo(.497, within(1e-9));
        assertThat(of(THORAX, ABDOMEN)).isCloseTo(.355, within(1e-9));
        assertThat(of(ABDOMEN, PELVIS)).isCloseTo(.281, within(1e-9));
        assertThat(of(THORAX, ABDOMEN, PELVIS, HEAD_AND_NECK)).isCloseTo(.578, within(1e-9));
        assertThat(headArmsTrunk()).isCloseTo(.678, within(1e-9));
    }

    /** Winter DA 2009, table 4.1: total leg has its centre at .447 from the hip, foot and leg at .606 from the knee. */
    @Test
    void theCentreOfAStraightLegFollowsFromItsSegments() {
        Skeleton body = upright();
        double ankle = body.point("ankle.R").y();
        double hip = body.point("hip.R").y();
        double centre = CentreOfMass.parts(body).stream()
                        .limit(3)
                        .mapToDouble(p -> p.mass() * p.at().y())
                        .sum()
                / .161;

        // the table's foot ends at the malleolus; ours reaches down to the sole
        assertThat((hip - centre) / (hip - ankle)).isCloseTo(.447, within(.02));
    }

    /** Derived from the table above on the drawn skeleton; .55 to .58 H is what textbooks give for adults (memory). */
    @Test
    void theStandingFigureHasItsCentreAt565ThousandthsOfItsStature() {
        Vec3 centre = CentreOfMass.of(upright());

        assertThat(centre.y()).isCloseTo(.565, within(.004));
        assertThat(centre.x()).isCloseTo(.002, within(.003));
        assertThat(centre.z()).isCloseTo(0, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"stand", "half-kneel", "hands-knees", "supine-feet-on-wall", "table-knee-hug", "sit-reach"})
    void posesThatNeedNoWallAreStableOnWhatCarriesThem(String name) {
        assertThat(Balance.of(Poses.solved(name)).isStable()).isTrue();
    }

    /** Derived from the drawn feet, knees and hands; our own arithmetic. */
    @ParameterizedTest
    @CsvSource({"stand, .047", "half-kneel, .041", "hands-knees, .11"})
    void marginsOfTheModelPoses(String name, double margin) {
        assertThat(Balance.of(Poses.solved(name)).margin()).isCloseTo(margin, within(.02));
    }

    @Test
    void theWallLeanFallsBackWithoutItsWall() {
        Balance balance = Balance.of(LEANING);

        assertThat(balance.isStable()).isFalse();
        assertThat(balance.margin()).isCloseTo(-.038, within(.006));
    }

    /** Our own arithmetic on the drawn body, by moments about the foot of the wall. */
    @ParameterizedTest
    @CsvSource({"1.0, .103", ".9, .117", ".8, .131", ".7, .145", ".6, .159", ".5, .173", ".4, .187"})
    void theWallPushesHarderTheMoreLoadLiesOnTheForefoot(double heels, double push) {
        assertThat(LEAN.push(heels, 0)).isCloseTo(push, within(.004));
        assertThat(LEAN.heelShare(LEAN.push(heels, 0), 0)).isCloseTo(heels, within(1e-9));
        assertThat(LEAN.push(heels, .3)).isBetween(.85 * push, .99 * push);
    }

    @Test
    void threeQuartersRestOnTheHeelsWhenTheCalvesRest() {
        assertThat(LEAN.restingHeelShare()).isCloseTo(.74, within(.02));
        assertThat(LEAN.ankleMoment(LEAN.restingHeelShare(), 0)).isCloseTo(0, within(1e-12));
        assertThat(LEAN.ankleMoment(1, 0)).isNegative();
        assertThat(LEAN.ankleMoment(.5, 0)).isPositive();
    }

    /** 70 kg and 1.75 m: −26 Nm with all load on the heels to 34 Nm with 40 %. */
    @ParameterizedTest
    @CsvSource({"1.0, -26", ".7, 4", ".4, 34"})
    void ankleMomentsOfBothLegsInNewtonMetres(double heels, double moment) {
        assertThat(LEAN.ankleMoment(heels, 0) * 70 * 9.81 * 1.75).isCloseTo(moment, within(3.));
    }

    @Test
    void sixtyPercentOnTheHeelsIsReachableOnADryFloor() {
        assertThat(LEAN.canRestOnHeels(.6, .4)).isTrue();
        assertThat(LEAN.canRestOnHeels(.6, .1)).isFalse();
    }

    @Test
    void aPoseWithoutAWallBehindItHasNoLean() {
        assertThat(WallLean.of(Poses.solved("stand"))).isEmpty();
        assertThat(WallLean.of(Poses.solved("band-row"))).isEmpty();
    }

    @Test
    void theOtherSideBalancesTheSame() {
        SolvedPose pose = Poses.solved("half-kneel");

        assertThat(Balance.of(pose.mirrored()).margin())
                .isCloseTo(Balance.of(pose).margin(), within(1e-9));
    }

    private static Skeleton upright() {
        return Skeleton.of(
                new Posture(new Vec3(0, .53, 0), Rotation.NONE, JointAngles.STRAIGHT, java.util.Map.of()),
                Proportions.STANDARD);
    }
}
