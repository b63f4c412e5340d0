package org.drillsheaf.course;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.drillsheaf.Problems;

/**
 * Where the program's own data lies: vocabularies, catalogue, templates.
 *
 * @param home the project folder, or the folder it was installed in
 */
public record Folders(Path home) {

    /** The folder the launcher names, else the working folder; empty when the data is not there, which is told. */
    public static Optional<Folders> ofThisProgram(Problems problems) {
        String home = System.getProperty("drillsheaf.home", "");
        Folders folders = new Folders(Path.of(home).toAbsolutePath().normalize());
        if (!Files.isDirectory(folders.vocabularies())) {
            problems.error(
                    folders.home().toString(),
                    0,
                    "The folders shared, exercise-library and templates are not here",
                    "Start Drillsheaf by its launcher, or from the project folder");
            return Optional.empty();
        }
        return Optional.of(folders);
    }

    public Path vocabularies() {
        return home.resolve("shared");
    }

    public Path catalogue() {
        return home.resolve("exercise-library");
    }

    public Path tests() {
        return vocabularies().resolve("tests.yaml");
    }

    public Path schema(String name) {
        return vocabularies().resolve("schemas").resolve(name + ".schema.json");
    }

    public Path templates() {
        return home.resolve("templates");
    }

    public Path house() {
        return home.resolve("samples").resolve("house.yaml");
    }
}
