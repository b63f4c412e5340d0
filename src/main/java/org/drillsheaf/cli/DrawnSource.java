package org.drillsheaf.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.Folders;
import org.drillsheaf.drill.DrillStatus;
import org.drillsheaf.drill.library.HouseLayer;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.drill.library.LibraryFiles;

/**
 * Something that can be drawn: a drill, the pose of a drill, a single pose, or a movement test.
 *
 * @param file as the user knows it
 * @param name short name for files
 * @param isTest whether it is a movement test, whose measured distances are drawn too
 */
record DrawnSource(String file, String name, YamlNode node, boolean isTest) {

    /** @param named id of a drill in the catalogue or of a movement test, or a path */
    static DrawnSource find(String named, Folders folders) {
        Path path = Path.of(named);
        boolean isPath = named.endsWith(".yaml") || named.endsWith(".yml") || Files.isRegularFile(path);
        if (isPath) {
            return read(path);
        }
        return drill(named, folders)
                .map(DrawnSource::of)
                .or(() -> tests(folders).stream()
                        .filter(test -> test.name().equals(named))
                        .findFirst())
                .orElseThrow(() -> BadInput.because(
                        named,
                        "There is no drill of this name in the catalogue, and no movement test",
                        "Ids are the file names in " + folders.catalogue() + " and those in " + folders.tests()));
    }

    /** The name that a reader knows it by, in English or the first language that there is; its id where it has none. */
    String title() {
        return node.get("name")
                .flatMap(names -> names.text("en").or(() -> names.entries().values().stream()
                        .flatMap(name -> name.text().stream())
                        .findFirst()))
                .orElse(name);
    }

    /** Every movement test that has a picture, in the best order of the day. */
    static List<DrawnSource> tests(Folders folders) {
        String file = folders.tests().toString();
        return parse(folders.tests()).get("tests").map(YamlNode::items).orElse(List.of()).stream()
                .filter(test -> test.has("pose"))
                .map(test -> new DrawnSource(file, test.text("id").orElse("test"), test, true))
                .toList();
    }

    /** Every drill of the catalogue that is not withdrawn, in the order of the names. */
    static List<DrawnSource> catalogue(Folders folders) {
        return layers(folders).drills().values().stream()
                .filter(drill -> !drill.node().text("status").equals(Optional.of(DrillStatus.WITHDRAWN.id())))
                .map(DrawnSource::of)
                .toList();
    }

    private static DrawnSource of(HouseLayer.Laid drill) {
        String file = drill.node().file();
        return new DrawnSource(file, plainName(file), drill.node(), false);
    }

    private static Optional<HouseLayer.Laid> drill(String id, Folders folders) {
        Problems problems = new Problems();
        Optional<HouseLayer.Laid> drill = LibraryFiles.drill(folders.files(), id, problems);
        BadInput.stopAtErrors(problems);
        return drill;
    }

    private static Layers layers(Folders folders) {
        Problems problems = new Problems();
        Layers layers = LibraryFiles.layers(folders.files(), problems);
        BadInput.stopAtErrors(problems);
        return layers;
    }

    private static DrawnSource read(Path file) {
        return new DrawnSource(file.toString(), plainName(file.toString()), parse(file), false);
    }

    private static String plainName(String file) {
        return String.valueOf(Path.of(file).getFileName()).replaceFirst("\\.ya?ml$", "");
    }

    private static YamlNode parse(Path file) {
        Problems problems = new Problems();
        return YamlNode.parse(file.toString(), TextFile.read(file), problems).orElseGet(() -> {
            BadInput.stopAtErrors(problems);
            throw BadInput.because(file.toString(), "The file cannot be read", "Check that it is YAML");
        });
    }
}
