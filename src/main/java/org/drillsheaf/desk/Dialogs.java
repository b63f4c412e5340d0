package org.drillsheaf.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The few windows besides the window: choosing files. */
public interface Dialogs {

    /** Where to write a file. */
    Optional<Path> save(String title, String proposedName);

    /** A folder to write into. */
    Optional<Path> folder(String title);

    /**
     * Which files to read.
     *
     * @param endings for example {@code *.yaml}
     */
    List<Path> open(String title, String what, String... endings);

    /**
     * Hands a file to the program that this machine opens such files with.
     *
     * @return false when there is none
     */
    boolean show(Path file);
}
