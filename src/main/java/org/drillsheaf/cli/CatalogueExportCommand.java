package org.drillsheaf.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.exchange.archive.ArchivePictures;
import org.drillsheaf.exchange.archive.CatalogueArchive;
import org.drillsheaf.exchange.file.FileKind;
import org.drillsheaf.exchange.sheet.CsvFile;
import org.drillsheaf.exchange.sheet.XlsxFile;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the catalogue, the clinic's own drills over the starter catalogue, into one file. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes the whole catalogue, with the clinic's own drills, into one file.",
        footer = {"", "Exit codes: 0 done, 2 bad input."})
final class CatalogueExportCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HouseOption house = new HouseOption();

    @Parameters(
            paramLabel = "<file>",
            description = "The file to write; its ending says what it is: .zip, .xlsx or .csv")
    private Path file = Path.of("");

    @Option(names = "--without-pictures", description = "Leaves the pictures out of a zip file.")
    private boolean withoutPictures;

    @Option(names = "--overwrite", description = "Writes over a file that is there already.")
    private boolean overwrite;

    @Option(
            names = "--today",
            paramLabel = "<date>",
            description = "The day of the export, for example 2026-11-25; today by default.")
    private @Nullable LocalDate today;

    @Override
    public Integer call() {
        Problems name = new Problems();
        Optional<FileKind> kind = FileKind.of(file, name);
        BadInput.stopAtErrors(name);
        if (Files.exists(file) && !overwrite) {
            throw BadInput.because(
                    file.toString(), "The file is there already", "Choose another name, or say --overwrite");
        }
        try (Progress progress = new Progress(spec.commandLine().getErr())) {
            progress.stage("Reading the catalogue");
            Problems problems = new Problems();
            Layers layers = LibraryFiles.layers(house.folders().files(), problems);
            BadInput.stopAtErrors(problems);
            TextFile.write(file, out -> write(kind.orElseThrow(), layers, out, progress));
            spec.commandLine().getOut().println(layers.drills().size() + " drills written into " + file + ".");
        }
        return ExitCode.DONE;
    }

    private void write(FileKind kind, Layers layers, OutputStream out, Progress progress) throws IOException {
        int all = layers.drills().size();
        progress.stage("Writing " + all + " drills");
        switch (kind) {
            case ZIP ->
                CatalogueArchive.write(
                        layers,
                        Optional.ofNullable(today).orElseGet(LocalDate::now),
                        withoutPictures ? Optional.empty() : Optional.of(new ArchivePictures(new FigureDrawer())),
                        out,
                        done -> progress.part("Packing drills", done, all));
            case XLSX -> XlsxFile.write(layers, out);
            case CSV -> CsvFile.write(layers, out);
        }
    }
}
