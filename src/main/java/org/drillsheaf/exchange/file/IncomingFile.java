package org.drillsheaf.exchange.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.archive.ArchiveReader;
import org.drillsheaf.exchange.sheet.CsvFile;
import org.drillsheaf.exchange.sheet.XlsxFile;

/** Reads drills that come in from an archive or a sheet. */
public final class IncomingFile {
    private IncomingFile() {}

    /**
     * Reads the file, whichever kind it is.
     *
     * @param now the catalogue as it is now, from which a sheet takes what no cell holds
     * @return empty when the whole file is refused, and then {@code problems} says why
     */
    public static Optional<Incoming> read(Path file, Layers now, Problems problems) {
        Optional<FileKind> kind = FileKind.of(file, problems);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(file)) {
            problems.error(file.toString(), 0, "There is no such file", "Check the name and the folder");
            return Optional.empty();
        }
        try {
            return switch (kind.get()) {
                case ZIP -> ArchiveReader.read(file, problems);
                case XLSX -> XlsxFile.read(file, now, problems);
                case CSV -> CsvFile.read(file, now, problems);
            };
        } catch (IOException e) {
            problems.error(file.toString(), 0, "The file cannot be read (" + e.getMessage() + ")", "Check the disk");
            return Optional.empty();
        }
    }
}
