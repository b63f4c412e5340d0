package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.BodyBuild;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every pose of the library, the variants' too. */
class LibraryPosesTest {
    private static final Map<Path, List<SolvedSheet>> SOLVED = new ConcurrentHashMap<>();

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
        SOLVED.put(drill, sheets);

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
        for (SolvedSheet sheet : solved(drill)) {
            for (SolvedPose pose : sheet.all()) {
                poses++;
                Penetrations.tooDeep(pose).stream().map(Penetration::words).forEach(tooDeep::add);
            }
        }

        assertThat(tooDeep).isEmpty();
        assertThat(poses).isPositive();
    }

    /** Every third drill, chosen by its name, or with {@code -Dbuilds=all} every one. */
    static Stream<Path> drillsForOtherBuilds() throws IOException {
        boolean all = "all".equals(System.getProperty("builds"));
        return drills().filter(
                        f -> all || Math.floorMod(f.getFileName().toString().hashCode(), 3) == 0);
    }

    /** Poses are written for the average body; without room for its flesh a broader one lies up to 47 mm in a chair. */
    @ParameterizedTest
    @MethodSource("drillsForOtherBuilds")
    void bodiesOfOtherBuildsLieNoDeeperThanTheAverageOneMay(Path drill) {
        List<String> tooDeep = new ArrayList<>();
        List<String> floating = new ArrayList<>();
        for (SolvedSheet sheet : solved(drill)) {
            for (BodyBuild build : List.of(BodyBuild.LARGER, BodyBuild.OLDER)) {
                for (SolvedPose pose : sheet.sheet().solve(build).all()) {
                    Penetrations.tooDeep(pose).forEach(p -> tooDeep.add(build + " " + p.words()));
                    if (pose.residual() > FleshRoom.MOST_MISSED) {
                        floating.add(build + " misses a contact by " + pose.residual());
                    }
                }
            }
        }

        assertThat(tooDeep).isEmpty();
        assertThat(floating).isEmpty();
    }

    private static List<SolvedSheet> solved(Path drill) {
        return SOLVED.computeIfAbsent(drill, d -> sheets(d, new Problems()));
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
