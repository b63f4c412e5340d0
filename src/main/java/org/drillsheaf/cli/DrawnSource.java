package org.drillsheaf.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/**
 * A file that can be drawn: a drill, the pose of a drill, or a single pose.
 *
 * @param file as the user knows it
 * @param name short name for files and captions
 */
record DrawnSource(String file, String name, YamlNode node) {

    /** @param named id of a drill in the catalogue, or a path */
    static DrawnSource find(String named, Folders folders) {
        Path path = Path.of(named);
        boolean isPath = named.endsWith(".yaml") || named.endsWith(".yml") || Files.isRegularFile(path);
        Path file = isPath ? path : folders.catalogue().resolve(named + ".yaml");
        if (!isPath && !Files.isRegularFile(file)) {
            throw BadInput.because(
                    named,
                    "There is no drill of this name in the catalogue",
                    "Ids are the file names in " + folders.catalogue());
        }
        return read(file);
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
        Problems problems = new Problems();
        String name = file.getFileName().toString().replaceFirst("\\.ya?ml$", "");
        YamlNode node = YamlNode.parse(file.toString(), TextFile.read(file), problems)
                .orElseGet(() -> {
                    BadInput.stopAtErrors(problems);
                    throw BadInput.because(file.toString(), "The file cannot be read", "Check that it is YAML");
                });
        return new DrawnSource(file.toString(), name, node);
    }
}
