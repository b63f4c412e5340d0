package org.drillsheaf.program;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.library.ProjectFiles;
import org.drillsheaf.saying.SayingFiles;
import org.drillsheaf.saying.Sayings;
import org.drillsheaf.screen.Gate;
import org.drillsheaf.screen.ReadingRules;
import org.drillsheaf.screen.ScreenFiles;

/** Reads the house's vocabularies and drills from a project folder, each through the reader of its own package. */
public final class VocabularyReader {
    private final Path folder;
    private final ProjectFiles files;
    private final Problems problems;

    private VocabularyReader(ProjectFiles files, Problems problems) {
        this.folder = files.project();
        this.files = files;
        this.problems = problems;
    }

    /**
     * Reads everything.
     *
     * @param folder the project folder, with {@code shared} and {@code exercise-library} in it
     * @return empty when a vocabulary cannot be read; the reasons then stand in {@code problems}
     */
    public static Optional<Vocabulary> read(Path folder, Problems problems) {
        return read(ProjectFiles.of(folder), problems);
    }

    /** The same with a clinic's folder that may lie elsewhere. */
    public static Optional<Vocabulary> read(ProjectFiles files, Problems problems) {
        return new VocabularyReader(files, problems).read();
    }

    private Optional<Vocabulary> read() {
        Optional<ReadingRules> reading = ScreenFiles.read(folder.resolve("shared"), testsOfTheClinic(), problems);
        Optional<Library> library = LibraryFiles.read(files, problems);
        if (reading.isEmpty() || library.isEmpty()) {
            return Optional.empty();
        }
        DrillWords words = library.get().catalogue().words();
        Set<String> goals = words.goals().keySet();
        Set<String> positions = words.positions().keySet();
        Optional<PhaseTable> phases = phases().flatMap(file ->
                schema("phases").flatMap(schema -> PhaseTableReader.read(file, schema, goals, positions, problems)));
        Optional<BuilderSettings> builder = yaml("builder").flatMap(file -> schema("builder")
                .flatMap(schema -> BuilderSettingsReader.read(file, schema, goals, problems)));
        if (phases.isEmpty() || builder.isEmpty()) {
            return Optional.empty();
        }
        // Its own list: an error in some drill must not make the gates unreadable.
        Problems own = new Problems();
        Optional<List<Gate>> gates = ScreenFiles.gates(folder.resolve("shared"), reading.get(), own);
        problems.addAll(own.all());
        Optional<Sayings> sayings = SayingFiles.read(folder.resolve("shared/sayings"), problems);
        return gates.flatMap(
                g -> sayings.map(s -> new Vocabulary(reading.get(), library.get(), phases.get(), g, builder.get(), s)));
    }

    /** A clinic's own tests lie over ours; the file need not be there. */
    private Optional<Path> testsOfTheClinic() {
        return files.clinic().map(clinic -> clinic.resolve("tests.yaml")).filter(Files::exists);
    }

    /** A clinic's own table of phases takes the place of ours. */
    private Optional<YamlNode> phases() {
        return files.clinic()
                .map(clinic -> clinic.resolve("phases.yaml"))
                .filter(Files::exists)
                .map(file -> file(file.toString()))
                .orElseGet(() -> yaml("phases"));
    }

    private Optional<YamlNode> yaml(String name) {
        return file("shared/" + name + ".yaml");
    }

    private Optional<YamlNode> file(String path) {
        Problems own = new Problems();
        Optional<YamlNode> node = text(path).flatMap(text -> YamlNode.parse(path, text, own));
        problems.addAll(own.all());
        return node;
    }

    private Optional<YamlSchema> schema(String name) {
        return text("shared/schemas/" + name + ".schema.json").map(YamlSchema::of);
    }

    private Optional<String> text(String path) {
        try {
            return Optional.of(Files.readString(folder.resolve(path)));
        } catch (IOException e) {
            problems.error(path, 0, "The file cannot be read", "Check that it is there, is UTF-8 and may be read");
            return Optional.empty();
        }
    }
}
