package org.drillsheaf.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.Folders;

/**
 * Something that can be drawn: a drill, the pose of a drill, a single pose, or a movement test.
 *
 * @param file as the user knows it
 * @param name short name for files and captions
 * @param isTest whether it is a movement test, whose measured distances are drawn too
 */
record DrawnSource(String file, String name, YamlNode node, boolean isTest) {

    /** @param named id of a drill in the catalogue or of a movement test, or a path */
    static DrawnSource find(String named, Folders folders) {
        Path path = Path.of(named);
        boolean isPath = named.endsWith(".yaml") || named.endsWith(".yml") || Files.isRegularFile(path);
        Path file = isPath ? path : folders.catalogue().resolve(named + ".yaml");
        if (!isPath && !Files.isRegularFile(file)) {
            return tests(folders).stream()
                    .filter(test -> test.name().equals(named))
                    .findFirst()
                    .orElseThrow(() -> BadInput.because(
                            named,
                            "There is no drill of this name in the catalogue, and no movement test",
                            "Ids are the file names in " + folders.catalogue() + " and those in " + folders.tests()));
        }
        return read(file);
    }

    /** Every movement test that has a picture, in the best order of the day. */
    static List<DrawnSource> tests(Folders folders) {
        String file = folders.tests().toString();
        return parse(folders.tests()).get("tests").map(YamlNode::items).orElse(List.of()).stream()
                .filter(test -> test.has("pose"))
                .map(test -> new DrawnSource(file, test.text("id").orElse("test"), test, true))
                .toList();
    }

    /** Every file of the catalogue in the order of the names. */
    static List<DrawnSource> catalogue(Folders folders) {
        try (Stream<Path> files = Files.list(folders.catalogue())) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .map(DrawnSource::read)
                    .toList();
        } catch (IOException e) {
            throw BadInput.because(
                    folders.catalogue().toString(), "The catalogue cannot be read", "Check that the folder is there");
        }
    }

    private static DrawnSource read(Path file) {
        String name = file.getFileName().toString().replaceFirst("\\.ya?ml$", "");
        return new DrawnSource(file.toString(), name, parse(file), false);
    }

    private static YamlNode parse(Path file) {
        Problems problems = new Problems();
        return YamlNode.parse(file.toString(), TextFile.read(file), problems).orElseGet(() -> {
            BadInput.stopAtErrors(problems);
            throw BadInput.because(file.toString(), "The file cannot be read", "Check that it is YAML");
        });
    }
}
