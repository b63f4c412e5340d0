package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.pose.PoseSheet;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A page with many pictures stays small. Seen from the quarter, furniture and half-kneeling have the most lines. */
class PictureBytesTest {
    private static final FigureDrawer DRAWER = new FigureDrawer();
    /** The largest scale of client pages: lying and kneeling. */
    private static final DrawingStyle PAPER = DrawingStyle.paper(50);

    private static final int MOST_BYTES = 25_000;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bed-edge-hang",
                "bed-edge-press",
                "table-head-rest",
                "table-slide",
                "hug-a-cushion",
                "chest-on-seat",
                "half-kneel-rise",
                "side-waist-long"
            })
    void everyQuarterViewWithItsKeysStaysUnderTwentyFiveKilobytes(String drill) throws IOException {
        Map<String, Integer> bytes = new TreeMap<>();
        PoseSheet sheet = sheet(drill);
        SolvedSheet solved = sheet.solve();
        for (String name : sheet.views()) {
            View view = View.parse(name).orElseThrow();
            if (name.startsWith("q:")) {
                solved.poses().forEach((frame, pose) -> bytes.put(frame.id() + " " + name, bytes(pose, view)));
            }
        }

        assertThat(bytes).isNotEmpty();
        assertThat(bytes.values()).as("%s", bytes).allMatch(size -> size < MOST_BYTES);
    }

    private static int bytes(SolvedPose pose, View view) {
        Map<String, String> keys = new LinkedHashMap<>();
        pose.marks().forEach(mark -> keys.put(mark.id(), String.valueOf(keys.size() + 1)));
        return DrawingSvg.write(DRAWER.draw(pose, view, PAPER, Annotations.ofKeys(keys)))
                .length();
    }

    private static PoseSheet sheet(String drill) throws IOException {
        Problems problems = new Problems();
        return YamlNode.parse(drill, Files.readString(Path.of("exercise-library", drill + ".yaml")), problems)
                .flatMap(file -> file.get("pose"))
                .flatMap(pose -> PoseSheetReader.read(pose, problems))
                .orElseThrow(() -> new AssertionError(problems.all()));
    }
}
