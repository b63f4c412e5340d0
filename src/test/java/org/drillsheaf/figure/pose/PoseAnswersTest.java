package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a solved pose tells: points, distances for a client, sizes that fit, and words. */
class PoseAnswersTest {

    static java.util.stream.Stream<String> poses() {
        return Poses.names().stream();
    }

    @ParameterizedTest
    @MethodSource("poses")
    void solvedAnglesAreThoseOfTheJointPoints(String name) {
        SolvedPose pose = Poses.solved(name);

        for (Side side : Side.values()) {
            for (String angle : new String[] {"hip flex", "hip abd", "knee flex", "elbow flex", "ankle dorsi"}) {
                String[] words = angle.split(" ");
                var motion =
                        org.drillsheaf.figure.body.Motion.of(words[0], words[1]).orElseThrow();
                assertThat(pose.measuredAngle(motion, side))
                        .as(angle + " " + side)
                        .isCloseTo(pose.angle(words[0], side, words[1]), within(.1));
            }
        }
    }

    @Test
    void theOtherSideHasMirroredPointsMarksAndMuscles() {
        SolvedPose pose = Poses.solved("band-row");
        SolvedPose other = pose.mirrored();

        assertThat(other.point("elbow.L").distanceTo(pose.point("elbow.R").mirrored()))
                .isLessThan(1e-9);
        assertThat(other.feel()).containsExactly("triceps.L", "upper-back");
        assertThat(((Mark.Arrow) other.marks().get(0)).at()).isEqualTo("elbow.L");
        assertThat(other.mirrored().point("tip.R")).isEqualTo(pose.point("tip.R"));
        assertThat(other.isMirrored()).isTrue();
    }

    @Test
    void heelsStandAtTheDistanceThatTheTextPrints() {
        Problems problems = new Problems();
        PoseSheet sheet = YamlNode.parse(
                        "x.yaml",
                        """
                        distances:
                          heels-from-wall: {of: heel-back.R, from: wall, along: x}
                          between-heels: {of: heel.R, from: heel.L}
                        start:
                          joints: {hip: {abd: 5}}
                          props: [{wall: {x: 0}}]
                          contacts:
                            - {flat: feet, plane: floor}
                            - {touch: feet, plane: floor}
                            - {place: heel-back.R, x: 0.15}
                          solve: [root.x, root.y]
                        """,
                        problems)
                .flatMap(n -> PoseSheetReader.read(n, problems))
                .orElseThrow();
        Map<String, Double> distances = sheet.solve().distances();

        assertThat(distances.get("heels-from-wall")).isCloseTo(.15, within(1e-4));
        assertThat(PersonalDistance.of("heels-from-wall", distances.get("heels-from-wall"), 172))
                .isEqualTo(new PersonalDistance("heels-from-wall", 26, 2));
        // hips .101 apart, legs 5° out over .49 of thigh and shank
        assertThat(distances.get("between-heels"))
                .isCloseTo(.101 + 2 * .491 * Math.sin(Math.toRadians(5)), within(.01));
    }

    @Test
    void twentySixCentimetresAreOneFootLengthAt172() {
        assertThat(PersonalDistance.of("d", .152, 172).footLengths(172)).isEqualTo(1);
        assertThat(PersonalDistance.measured("foot", 25.4)).isEqualTo(new PersonalDistance("foot", 25, 1));
        assertThatThrownBy(() -> PersonalDistance.of("d", .1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Derived: hip centres .101 apart less one knee breadth of .063; 6.5 cm at 172 cm. */
    @Test
    void theBallThatKeepsTheKneesInLineWithTheHips() {
        assertThat(FittingSizes.kneeBall()).isCloseTo(.038, within(1e-6));
        assertThat(FittingSizes.kneeBall() * 172).isCloseTo(6.5, within(.1));
    }

    /** Own arithmetic: knee centre .285, less the buttock under the hip centre, plus what sinks in. */
    @Test
    void aSeatForLevelThighsIsALittleUnderKneeHeight() {
        assertThat(FittingSizes.levelSeat()).isBetween(.22, .25).isLessThan(.285);
        assertThat(FittingSizes.towelUnderThigh()).isBetween(.015, .04);
    }

    @Test
    void theWallLeanInWords() {
        assertThat(PoseWords.english().describe(Poses.solved("wall-lean")))
                .isEqualTo("Standing, the back on a wall. The back is rounded. Both hips are bent a little."
                        + " Both knees are bent a little. Both arms reach forward and down.");
    }

    @Test
    void sidesAreTheClientsOwn() {
        SolvedPose pose = Poses.solved("half-kneel");

        assertThat(PoseWords.english().describe(pose)).startsWith("Half kneeling with the right foot ahead.");
        assertThat(PoseWords.english().describe(pose.mirrored())).startsWith("Half kneeling with the left foot ahead.");
    }

    @Test
    void anotherLanguageIsAnotherTable() {
        PoseWords spanish = PoseWords.in("es").orElseThrow();

        assertThat(spanish.describe(Poses.solved("supine-feet-on-wall")))
                .startsWith("Boca arriba, los dos pies en una pared.");
        assertThat(PoseWords.in("es").orElseThrow().table().keySet())
                .isEqualTo(PoseWords.english().table().keySet())
                .isEqualTo(PoseWords.in("ar").orElseThrow().table().keySet());
        assertThat(PoseWords.in("xx")).isEmpty();
    }

    @Test
    void wordsAreShortForEveryPose() {
        for (String name : Poses.names()) {
            String words = PoseWords.english().describe(Poses.solved(name));
            assertThat(words).doesNotContain("{").doesNotContain("root.");
            assertThat(words.split("[.,]"))
                    .allSatisfy(s -> assertThat(s.strip().split(" ")).hasSizeLessThanOrEqualTo(12));
        }
    }
}
