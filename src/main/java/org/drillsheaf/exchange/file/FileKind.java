package org.drillsheaf.exchange.file;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;

/** The kinds of file that hold a whole catalogue, told apart by the ending of the name. */
public enum FileKind {
    /** Drills as YAML, with pictures. */
    ZIP,
    /** A sheet for a spreadsheet. */
    XLSX,
    /** The same as text. */
    CSV;

    /** With the point, in small letters. */
    public String ending() {
        return "." + name().toLowerCase(Locale.ROOT);
    }

    /** Empty when the name does not say, and then {@code problems} tells. */
    public static Optional<FileKind> of(Path file, Problems problems) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        Optional<FileKind> kind =
                Arrays.stream(values()).filter(k -> name.endsWith(k.ending())).findFirst();
        if (kind.isEmpty()) {
            problems.error(
                    file.toString(),
                    0,
                    "The name does not say what kind of file this is",
                    "Let it end with "
                            + Arrays.stream(values()).map(FileKind::ending).collect(Collectors.joining(" or ")));
        }
        return kind;
    }
}
