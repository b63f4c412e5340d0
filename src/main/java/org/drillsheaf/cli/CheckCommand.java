package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.Problem;
import org.drillsheaf.Problem.Severity;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.check.CatalogueCheck;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.library.ProjectFiles;
import org.drillsheaf.saying.Speech;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks through the exercise library and says what to mend; changes nothing. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks the drills of a folder: texts, numbers, poses, safety tags, families, coverage.",
        footer = {"", "Exit codes: 0 no errors, 1 errors in the catalogue, 2 bad input."})
final class CheckCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HouseOption house = new HouseOption();

    @Parameters(
            arity = "0..1",
            paramLabel = "<dir>",
            description = "The folder of drills; the program's own exercise-library by default.")
    private @Nullable Path drills;

    @Option(
            names = "--today",
            paramLabel = "<date>",
            description = "The day that reviews are counted to, for example 2026-11-25; today by default.")
    private @Nullable LocalDate today;

    @Option(names = "--format", defaultValue = "text", description = "text or json (default: ${DEFAULT-VALUE}).")
    private Format format;

    @Option(
            names = "--coverage",
            description = "Prints also how many drills in how many positions each condition leaves for each goal.")
    private boolean coverage;

    @Option(
            names = "--limits-to-confirm",
            description = "Prints only the page of safety limits that a licensed clinician has to confirm.")
    private boolean limits;

    @Override
    public Integer call() {
        Folders folders = house.folders();
        Path folder = Optional.ofNullable(drills).orElseGet(folders::catalogue);
        if (!Files.isDirectory(folder)) {
            throw BadInput.because(folder.toString(), "There is no such folder", "Name the folder that holds drills");
        }
        PrintWriter out = spec.commandLine().getOut();
        if (limits) {
            new LimitsPage(HouseData.knowledge(folders).vocabulary()).lines().forEach(out::println);
            return ExitCode.DONE;
        }
        CheckReport report = check(folders, files(folders, folder));
        if (format == Format.json) {
            out.println(report.json());
        } else {
            report.print(out, coverage);
        }
        return report.count(Severity.ERROR) == 0 ? ExitCode.DONE : ExitCode.CANNOT;
    }

    /** A folder that was named stands alone, unless a clinic's folder was named with it. */
    private ProjectFiles files(Folders folders, Path folder) {
        Path full = folder.toAbsolutePath().normalize();
        if (folders.files().clinicDrills().filter(full::equals).isPresent()) {
            throw BadInput.because(
                    folder.toString(),
                    "These are the clinic's own drills, which lie over the starter catalogue",
                    "Leave the folder out: both are checked together");
        }
        return drills == null || house.isNamed()
                ? new ProjectFiles(folders.home(), full, Optional.of(folders.clinic()))
                : ProjectFiles.alone(folders.home(), full);
    }

    private static Library library(ProjectFiles files, Problems problems) {
        Optional<Library> library = LibraryFiles.read(files, problems);
        if (library.isEmpty()) {
            BadInput.stopAtErrors(problems);
        }
        return library.orElseThrow();
    }

    private CheckReport check(Folders folders, ProjectFiles files) {
        try (Progress progress = new Progress(spec.commandLine().getErr())) {
            progress.stage("Reading the vocabularies and the catalogue");
            Problems problems = new Problems();
            Optional<DrillReader> reader = LibraryFiles.drillReader(folders.home(), problems);
            Library library = library(files, problems);
            Optional<Speech> speech = LibraryFiles.speech(folders.home(), library, problems);
            if (speech.isEmpty()) {
                BadInput.stopAtErrors(problems);
            }
            Catalogue catalogue = library.catalogue();
            int drills = catalogue.drills().size();
            String checking = "Checking " + drills + " drills";
            progress.stage(checking);
            CatalogueCheck.Result result = new CatalogueCheck(
                            catalogue,
                            library.safetyRules(),
                            reader.orElseThrow(),
                            Optional.ofNullable(today).orElseGet(LocalDate::now),
                            speech.orElseThrow())
                    .run(done -> progress.part(checking, done, drills));
            List<Problem> all = new ArrayList<>(problems.all());
            all.addAll(result.problems());
            return new CheckReport(catalogue, library.layers(), all, result.coverage());
        }
    }
}
