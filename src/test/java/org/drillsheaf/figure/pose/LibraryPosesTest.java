package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.BodyBuild;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every pose of the library, the variants' too. */
class LibraryPosesTest {

    static Stream<Path> drills() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("exercise-library"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("drills")
    void contactsAreMetAndNoWrittenAngleMovesByMoreThanFiveDegrees(Path drill) {
        Problems problems = new Problems();
        List<SolvedSheet> sheets = sheets(drill, problems);

        for (SolvedSheet sheet : sheets) {
            problems.addAll(sheet.problems());
        }
        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        assertThat(sheets).hasSizeGreaterThan(0);
        // a variant may do without the wall that a distance is measured from, and then has other words too
        SolvedSheet own = sheets.get(0);
        assertThat(own.distances()).hasSameSizeAs(own.sheet().distances());
        assertThat(own.distances().values()).allMatch(statures -> statures > .005 && statures < 1.5);
    }

    /** Less than 5 mm at 1.75 m, or 21 mm where two things touch on purpose. */
    @ParameterizedTest
    @MethodSource("drills")
    void noLimbLiesInsideAPropTheTrunkOrAnotherLimb(Path drill) {
        List<String> tooDeep = new ArrayList<>();
        int poses = 0;
        for (SolvedSheet sheet : sheets(drill, new Problems())) {
            for (SolvedPose pose : sheet.all()) {
                poses++;
                Penetrations.tooDeep(pose).stream().map(Penetration::words).forEach(tooDeep::add);
            }
        }

        assertThat(tooDeep).isEmpty();
        assertThat(poses).isPositive();
    }

    /** Poses are written for the average body; without room for the arms they lie up to 50 mm in the trunk. */
    @ParameterizedTest
    @ValueSource(strings = {"sit-hum", "sit-foot-out", "slow-walk", "bed-edge-press"})
    void theArmsOfABroaderBodyRestOnItsTrunkAtMost(String drill) {
        List<String> tooDeep = new ArrayList<>();
        for (SolvedSheet sheet : sheets(Path.of("exercise-library", drill + ".yaml"), new Problems())) {
            for (SolvedPose pose : sheet.sheet().solve(BodyBuild.LARGER).all()) {
                Penetrations.tooDeep(pose).stream()
                        .map(Penetration::words)
                        .filter(words -> words.contains("trunk") && words.contains("arm"))
                        .forEach(tooDeep::add);
            }
        }

        assertThat(tooDeep).isEmpty();
    }

    /** The drill's own sheet and that of each variant that changes the pose. */
    private static List<SolvedSheet> sheets(Path drill, Problems problems) {
        YamlNode file = YamlNode.parse(drill.getFileName().toString(), read(drill), problems)
                .orElseThrow();
        YamlNode own = file.get("pose").orElseThrow();
        List<SolvedSheet> sheets = new ArrayList<>();
        PoseSheetReader.read(own, problems).map(PoseSheet::solve).ifPresent(sheets::add);
        for (YamlNode variant : file.get("variants").map(YamlNode::items).orElse(List.of())) {
            variant.get("pose")
                    .flatMap(changed -> PoseSheetReader.read(own.with(changed), problems))
                    .map(PoseSheet::solve)
                    .ifPresent(sheets::add);
        }
        return sheets;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
