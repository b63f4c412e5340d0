package org.drillsheaf.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.archive.ArchiveReader;

/** The kinds of file that hold a whole catalogue. */
final class CatalogueFile {
    private CatalogueFile() {}

    /** Told apart by the ending of the name. */
    enum Kind {
        ZIP;

        private String ending() {
            return "." + name().toLowerCase(Locale.ROOT);
        }
    }

    static Kind kind(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return Arrays.stream(Kind.values())
                .filter(kind -> name.endsWith(kind.ending()))
                .findFirst()
                .orElseThrow(() -> BadInput.because(
                        file.toString(),
                        "The name does not say what kind of file this is",
                        "Let it end with "
                                + Arrays.stream(Kind.values()).map(Kind::ending).collect(Collectors.joining(" or "))));
    }

    /** Ends the command when the whole file is refused. */
    static Incoming read(Path file) {
        Kind kind = kind(file);
        if (!Files.isRegularFile(file)) {
            throw BadInput.because(file.toString(), "There is no such file", "Check the name and the folder");
        }
        Problems problems = new Problems();
        Optional<Incoming> incoming =
                switch (kind) {
                    case ZIP -> ArchiveReader.read(file, problems);
                };
        BadInput.stopAtErrors(problems);
        return incoming.orElseThrow();
    }
}
