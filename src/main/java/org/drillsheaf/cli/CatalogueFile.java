package org.drillsheaf.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.archive.ArchiveReader;
import org.drillsheaf.exchange.sheet.CsvFile;
import org.drillsheaf.exchange.sheet.XlsxFile;

/** The kinds of file that hold a whole catalogue. */
final class CatalogueFile {
    private CatalogueFile() {}

    /** Told apart by the ending of the name. */
    enum Kind {
        /** Drills as YAML, with pictures. */
        ZIP,
        /** A sheet for a spreadsheet. */
        XLSX,
        /** The same as text. */
        CSV;

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

    /**
     * Ends the command when the whole file is refused.
     *
     * @param now the catalogue as it is now, from which a sheet takes what no cell holds
     */
    static Incoming read(Path file, Layers now) {
        Kind kind = kind(file);
        if (!Files.isRegularFile(file)) {
            throw BadInput.because(file.toString(), "There is no such file", "Check the name and the folder");
        }
        Problems problems = new Problems();
        try {
            Optional<Incoming> incoming =
                    switch (kind) {
                        case ZIP -> ArchiveReader.read(file, problems);
                        case XLSX -> XlsxFile.read(file, now, problems);
                        case CSV -> CsvFile.read(file, now, problems);
                    };
            BadInput.stopAtErrors(problems);
            return incoming.orElseThrow();
        } catch (IOException e) {
            throw BadInput.because(
                    file.toString(), "The file cannot be read (" + e.getMessage() + ")", "Check the disk");
        }
    }
}
