package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.exchange.HouseFolder;
import org.drillsheaf.exchange.ImportPlan;
import org.drillsheaf.exchange.ImportPlanner;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.IncomingCheck;
import org.drillsheaf.exchange.file.FileKind;
import org.drillsheaf.exchange.file.IncomingFile;
import org.drillsheaf.exchange.merge.Take;
import org.drillsheaf.saying.Speech;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what a file would change in the catalogue, and changes it when that was asked for. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = {
            "Shows what a file of drills would change in the catalogue; changes it with --apply.",
            "Only the clinic's own folder is written; all of it or nothing."
        },
        footer = {
            "",
            "Exit codes: 0 done, 1 something is rejected or undecided and nothing was written, 2 the file is refused."
        })
final class CatalogueImportCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HouseOption house = new HouseOption();

    @Parameters(paramLabel = "<file>", description = "A file that “catalogue export” wrote, edited or not.")
    private Path file = Path.of("");

    @Option(names = "--apply", description = "Writes the changes into the clinic's own folder.")
    private boolean apply;

    @Option(
            names = "--take",
            paramLabel = "<side>",
            description =
                    "Which side counts where both changed the same field: mine (as it is now) or theirs (the file).")
    private @Nullable Side take;

    @Option(names = "--skip-rejected", description = "Applies the others although some drills are rejected.")
    private boolean skipRejected;

    @Option(
            names = "--today",
            paramLabel = "<date>",
            description = "The day that reviews are counted to, for example 2026-11-25; today by default.")
    private @Nullable LocalDate today;

    @Option(names = "--format", defaultValue = "text", description = "text or json (default: ${DEFAULT-VALUE}).")
    private Format format;

    /** The sides in the words of the command line. */
    enum Side {
        mine(Take.MINE),
        theirs(Take.THEIRS);

        private final Take take;

        Side(Take take) {
            this.take = take;
        }
    }

    @Override
    public Integer call() {
        Folders folders = house.folders();
        ImportPlan plan = plan(folders);
        boolean isBlocked = !plan.undecided().isEmpty() || (!plan.rejected().isEmpty() && !(apply && skipRejected));
        boolean isApplied = apply && !isBlocked;
        if (isApplied && !plan.changes().isEmpty()) {
            apply(plan, folders);
        }
        ImportReport report = new ImportReport(plan, apply, isApplied);
        PrintWriter out = spec.commandLine().getOut();
        if (format == Format.json) {
            out.println(report.json());
        } else {
            report.print(out);
        }
        return isBlocked ? ExitCode.CANNOT : ExitCode.DONE;
    }

    private ImportPlan plan(Folders folders) {
        Problems name = new Problems();
        FileKind.of(file, name);
        BadInput.stopAtErrors(name);
        try (Progress progress = new Progress(spec.commandLine().getErr())) {
            progress.stage("Reading the catalogue as it is now");
            Problems problems = new Problems();
            Optional<Library> library = LibraryFiles.read(folders.files(), problems);
            Optional<CatalogueReader> catalogueReader = LibraryFiles.catalogueReader(folders.home(), problems);
            Optional<DrillReader> drillReader = LibraryFiles.drillReader(folders.home(), problems);
            Optional<Speech> speech = library.flatMap(read -> LibraryFiles.speech(folders.home(), read, problems));
            BadInput.stopAtErrors(problems);
            progress.stage("Reading " + file);
            Problems inFile = new Problems();
            Optional<Incoming> read =
                    IncomingFile.read(file, library.orElseThrow().layers(), inFile);
            BadInput.stopAtErrors(inFile);
            Incoming incoming = read.orElseThrow();
            IncomingCheck check = new IncomingCheck(
                    library.orElseThrow(),
                    catalogueReader.orElseThrow(),
                    drillReader.orElseThrow(),
                    Optional.ofNullable(today).orElseGet(LocalDate::now),
                    speech.orElseThrow(),
                    (done, all) -> progress.part("Checking drills that change", done, all));
            progress.stage("Comparing " + incoming.drills().size() + " drills");
            return ImportPlanner.plan(
                    library.orElseThrow().layers(),
                    incoming,
                    Optional.ofNullable(take).map(side -> side.take),
                    check);
        }
    }

    private static void apply(ImportPlan plan, Folders folders) {
        Problems problems = new Problems();
        List<Problem> failures = new HouseFolder(folders.files().clinicDrills().orElseThrow()).apply(plan.changes());
        problems.addAll(failures);
        BadInput.stopAtErrors(problems);
    }
}
