package org.drillsheaf.course;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.ProjectFiles;

/**
 * Where the program's own data lies: vocabularies, catalogue, templates.
 *
 * @param home the project folder, or the folder it was installed in
 * @param clinic the clinic's own folder: its tests and its drills; it need not be there
 */
public record Folders(Path home, Path clinic) {

    /** The folder the launcher names, else the working folder; empty when the data is not there, which is told. */
    public static Optional<Folders> ofThisProgram(Problems problems) {
        Path home = Path.of(System.getProperty("drillsheaf.home", ""))
                .toAbsolutePath()
                .normalize();
        Folders folders = new Folders(home, home.resolve("house"));
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

    /** The same with a clinic's folder that lies elsewhere. */
    public Folders withClinic(Path folder) {
        return new Folders(home, folder.toAbsolutePath().normalize());
    }

    /** What the catalogue is read from. */
    public ProjectFiles files() {
        return ProjectFiles.of(home, clinic);
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

    /** Where a clinic may lay templates and phrases of its own over ours; the folder need not be there. */
    public Path ownTemplates() {
        return clinic.resolve("templates");
    }

    /** Our templates and the clinic's own over them. */
    public List<Path> allTemplates() {
        return Files.isDirectory(ownTemplates()) ? List.of(templates(), ownTemplates()) : List.of(templates());
    }

    public Path house() {
        return home.resolve("samples").resolve("house.yaml");
    }
}
