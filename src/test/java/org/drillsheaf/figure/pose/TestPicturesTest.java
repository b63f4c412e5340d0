package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.draw.View;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pictures of the movement tests. */
class TestPicturesTest {

    static Stream<YamlNode> tests() throws IOException {
        Path file = Path.of("shared/tests.yaml");
        YamlNode read = YamlNode.parse(file.toString(), Files.readString(file), new Problems())
                .orElseThrow();
        return read.get("tests").orElseThrow().items().stream();
    }

    @ParameterizedTest
    @MethodSource("tests")
    void everyTestHasOneViewThatThereIsAndOneKeyframeWithAMarkWhereTheValueIsRead(YamlNode test) {
        PoseSheet sheet = sheet(test, new Problems()).orElseThrow();

        assertThat(sheet.views()).hasSize(1).allMatch(view -> View.parse(view).isPresent());
        assertThat(sheet.poses()).containsOnlyKeys(PoseFrame.START);
        assertThat(sheet.poses().get(PoseFrame.START).marks()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("tests")
    void contactsAreMetNoWrittenAngleMovesByMoreThanFiveDegreesAndNoLimbIsInsideAnother(YamlNode test) {
        Problems problems = new Problems();
        SolvedSheet solved = sheet(test, problems).orElseThrow().solve();
        problems.addAll(solved.problems());

        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        for (SolvedPose pose : solved.poses().values()) {
            assertThat(Penetrations.tooDeep(pose)).isEmpty();
        }
        assertThat(solved.distances()).hasSameSizeAs(solved.sheet().distances());
    }

    @Test
    void aLengthThatIsMeasuredInTheRoomStandsInThePicture() throws IOException {
        List<String> withALength = tests().filter(test -> sheet(test, new Problems())
                        .filter(sheet -> !sheet.distances().isEmpty())
                        .isPresent())
                .map(test -> test.text("id").orElseThrow())
                .toList();
        assertThat(withALength).contains("knee-to-wall", "toe-touch", "sway-back-stance");
    }

    private static Optional<PoseSheet> sheet(YamlNode test, Problems problems) {
        return test.get("pose").flatMap(pose -> PoseSheetReader.read(pose, problems));
    }
}
