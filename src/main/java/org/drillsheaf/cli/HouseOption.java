package org.drillsheaf.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.drillsheaf.course.Folders;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Lets a command name the clinic's own folder. */
final class HouseOption {
    @Option(
            names = "--house",
            paramLabel = "<dir>",
            description =
                    "The clinic's own folder with its tests and drills; the folder house of the program by default.")
    private @Nullable Path house;

    /** The program's folders, with the clinic's as it was named. */
    Folders folders() {
        if (house != null && !Files.isDirectory(house)) {
            throw BadInput.because(
                    house.toString(),
                    "There is no such folder",
                    "Name the folder that holds tests or exercise-library");
        }
        Folders folders = HouseData.folders();
        return house == null ? folders : folders.withClinic(house);
    }

    boolean isNamed() {
        return house != null;
    }
}
