package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Vec3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PoseMirrorTest {
    private static final List<String> POINTS = List.of(
            "pelvis",
            "head",
            "C7",
            "hip.R",
            "hip.L",
            "knee.R",
            "knee.L",
            "ankle.R",
            "ankle.L",
            "toe.R",
            "toe.L",
            "shoulder.R",
            "shoulder.L",
            "elbow.R",
            "elbow.L",
            "wrist.R",
            "wrist.L",
            "tip.R",
            "tip.L");
    /** Less than a pen's line in the largest picture; the solver goes another way to the same place. Statures. */
    private static final double SAME = .004;

    static Stream<Path> drills() throws Exception {
        List<Path> files = Files.list(Path.of("exercise-library")).sorted().toList();
        // some of all, and those whose root posture itself has a side
        return files.stream()
                .filter(f -> files.indexOf(f) % 6 == 0 || f.toString().matches(".*(side-prop|half-kneel|seat-heel).*"));
    }

    @ParameterizedTest
    @MethodSource("drills")
    void theMirroredFileIsTheMirroredBody(Path file) throws Exception {
        YamlDocument drill = YamlDocument.of(file.toString(), Files.readString(file), new Problems())
                .orElseThrow();
        YamlNode pose = drill.node().nearest("/pose");
        YamlDocument turned = drill.with("/pose", PoseMirror.of(pose));

        SolvedSheet expected = sheet(pose).solve().mirrored();
        SolvedSheet written = sheet(turned.node().nearest("/pose")).solve();

        expected.poses().forEach((frame, body) -> {
            SolvedPose other = written.pose(frame).orElseThrow();
            for (String point : POINTS) {
                Vec3 gap = other.point(point).minus(body.point(point));
                assertThat(gap.length()).as(frame + " " + point).isLessThan(SAME);
            }
        });
        assertThat(PoseMirror.of(turned.node().nearest("/pose")).path("views"))
                .isEqualTo(pose.json().path("views"));
    }

    private static PoseSheet sheet(YamlNode pose) {
        Problems problems = new Problems();
        return PoseSheetReader.read(pose, problems).orElseThrow(() -> new AssertionError(problems.all()));
    }
}
