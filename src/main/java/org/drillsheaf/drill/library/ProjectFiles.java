package org.drillsheaf.drill.library;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Which folders a library is read from.
 *
 * @param project holds {@code shared}
 * @param drills the starter catalogue
 * @param clinic the clinic's own folder, whose {@code exercise-library} lies over the starter catalogue; it need not be there
 */
public record ProjectFiles(Path project, Path drills, Optional<Path> clinic) {
    private static final String DRILLS = "exercise-library";
    private static final String CLINIC = "house";

    /** The project's own catalogue with the clinic's folder beside it. */
    public static ProjectFiles of(Path project) {
        return of(project, project.resolve(CLINIC));
    }

    /** The project's own catalogue with a clinic's folder that lies elsewhere. */
    public static ProjectFiles of(Path project, Path clinic) {
        return new ProjectFiles(project, project.resolve(DRILLS), Optional.of(clinic));
    }

    /** The drills of one folder and nothing over them. */
    public static ProjectFiles alone(Path project, Path drills) {
        return new ProjectFiles(project, drills, Optional.empty());
    }

    /** What a clinic's folder of drills is called for the moment in which a new one takes its place. */
    public static String nameBefore(Path clinicDrills) {
        return "." + clinicDrills.getFileName() + ".before";
    }

    /** Where the clinic's drills lie. */
    public Optional<Path> clinicDrills() {
        return clinic.map(c -> c.resolve(DRILLS));
    }
}
