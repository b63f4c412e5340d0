package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawCommandTest {
    private static final String POSE =
            """
            root: standing
            props: [{floor: {}}]
            contacts: [{touch: feet, plane: floor}]
            solve: [root.y]
            """;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Drillsheaf.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }

    private List<String> written() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aDrillIsDrawnInEveryKeyframeOfTheViewThatIsAskedFor() throws IOException {
        int code = run("draw", "wall-lean-breath", "--view", "side", "--out", folder.toString());
        assertThat(code).isZero();
        assertThat(written()).containsExactly("wall-lean-breath-move-side.svg", "wall-lean-breath-start-side.svg");
        assertThat(folder.resolve("wall-lean-breath-move-side.svg")).content().startsWith("<svg ");
    }

    @Test
    void aPoseFileIsDrawnToOnePngFile() throws IOException {
        Path pose = Files.writeString(folder.resolve("pose.yaml"), POSE);
        Path picture = folder.resolve("pose.png");
        assertThat(run("draw", pose.toString(), "--view", "front", "--scale", "40", "--out", picture.toString()))
                .isZero();
        assertThat(ImageIO.read(picture.toFile()).getHeight()).isGreaterThan(400);
    }

    @Test
    void aMovementTestIsDrawnByItsIdWithTheDistanceThatIsMeasured() throws IOException {
        int code = run("draw", "toe-touch", "--out", folder.toString());
        assertThat(err.toString()).doesNotContain("tests.yaml");
        assertThat(code).isZero();
        assertThat(written()).containsExactly("toe-touch-start-side.svg");
        String withTheDistance = Files.readString(folder.resolve("toe-touch-start-side.svg"));
        run("draw", "toe-touch", "--stature", "200", "--out", folder.toString());
        assertThat(folder.resolve("toe-touch-start-side.svg")).content().isNotEqualTo(withTheDistance);
    }

    @Test
    void theSheetOfTheTestsHoldsEveryTest() {
        Path file = folder.resolve("tests.svg");
        int code = run("draw", "--tests", "--sheet", "--scale", "30", "--out", file.toString());
        assertThat(err.toString()).doesNotContain("tests.yaml");
        assertThat(code).isZero();
        assertThat(out.toString()).contains("16 movement tests on");
    }

    @Test
    void testsWithoutASheetAreRefusedInOneLine() {
        assertThat(run("draw", "--tests")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).startsWith("--tests: This goes with --sheet only");
    }

    @Test
    void anUnknownDrillIsToldInOneLine() {
        assertThat(run("draw", "no-such-drill", "--out", folder.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).startsWith("no-such-drill: There is no drill of this name");
        assertThat(err.toString().strip().lines()).hasSize(1);
    }

    @Test
    void anAngleBeyondWhatABodyCanDoIsToldOnceAndNothingIsDrawn() throws IOException {
        Path pose = Files.writeString(folder.resolve("pose.yaml"), POSE + "joints: {knee: {flex: 10000}}\n");
        assertThat(run("draw", pose.toString(), "--out", folder.toString())).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString().strip().lines())
                .filteredOn(line -> !line.startsWith("Drawing"))
                .containsExactly(
                        pose + ":5: knee flex is 10000°, beyond what a body can do. Use degrees from" + " -15 to 155.");
        assertThat(written()).containsExactly("pose.yaml");
    }

    @Test
    void anUnknownViewIsToldWithTheOnesThereAre() {
        assertThat(run("draw", "wall-lean-breath", "--view", "upside")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(err.toString()).contains("far-side");
    }
}
