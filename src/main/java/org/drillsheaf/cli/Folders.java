package org.drillsheaf.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where the program's own data lies: vocabularies, catalogue, templates.
 *
 * @param home the project folder, or the folder it was installed in
 */
record Folders(Path home) {

    /** The folder the launcher names, else the working folder. */
    static Folders ofThisProgram() {
        String home = System.getProperty("drillsheaf.home", "");
        Folders folders = new Folders(Path.of(home).toAbsolutePath().normalize());
        if (!Files.isDirectory(folders.vocabularies())) {
            throw BadInput.because(
                    folders.home().toString(),
                    "The folders shared, exercise-library and templates are not here",
                    "Start Drillsheaf by its launcher, or from the project folder");
        }
        return folders;
    }

    Path vocabularies() {
        return home.resolve("shared");
    }

    Path catalogue() {
        return home.resolve("exercise-library");
    }

    Path tests() {
        return vocabularies().resolve("tests.yaml");
    }

    Path schema(String name) {
        return vocabularies().resolve("schemas").resolve(name + ".schema.json");
    }

    Path templates() {
        return home.resolve("templates");
    }

    Path house() {
        return home.resolve("samples").resolve("house.yaml");
    }
}
