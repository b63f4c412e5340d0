package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/** Poses for the tests of this part. */
public final class Poses {
    private static final Path FOLDER = Path.of("src/test/resources/figure/poses");

    private Poses() {}

    public static List<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Pose named(String name) {
        try {
            return of(Files.readString(FOLDER.resolve(name + ".yaml")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Pose of(String yaml) {
        Problems problems = new Problems();
        Pose pose = YamlNode.parse("pose.yaml", yaml, problems)
                .flatMap(node -> PoseReader.read(node, problems))
                .orElse(null);
        assertThat(problems.all()).isEmpty();
        return pose;
    }

    public static SolvedPose solved(String name) {
        return PoseSolver.solve(named(name));
    }
}
