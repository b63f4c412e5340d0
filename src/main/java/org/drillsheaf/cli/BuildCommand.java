package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The main job: a screen in, a reading, a program and a handout out. */
@Command(
        name = "build",
        mixinStandardHelpOptions = true,
        description = "Reads a client's screen, builds the program and prints the handout.",
        footer = {
            "",
            "Exit codes: 0 done, 1 cannot be done (a safety answer, or nothing fits; the reason is printed), 2 bad input."
        })
final class BuildCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HouseOption house = new HouseOption();

    @Parameters(paramLabel = "<client.yaml>", description = "The client's file.")
    private Path file;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "<dir>",
            description = "Folder for the program and the handout.")
    private Path out;

    @Option(names = "--visit", paramLabel = "<date>", description = "The visit to build from; the last one by default.")
    private @Nullable LocalDate visit;

    @Option(names = "--explain", description = "Print every rule, reason and alternative in full.")
    private boolean explain;

    @Option(
            names = "--signed-by",
            paramLabel = "<coach>",
            description = "The coach who has checked the program; without it the handout says that nobody has yet.")
    private @Nullable String signedBy;

    @Option(
            names = "--document",
            paramLabel = "<document>",
            split = ",",
            defaultValue = "client-handout",
            converter = DocumentKindConverter.class,
            description = "What to print besides the program: client-handout (default), reminder-card, practice-log, "
                    + "coach-sheet, progress-report. May be given several times.")
    private List<DocumentKind> documents = List.of();

    @Override
    public Integer call() {
        PrintWriter terminal = spec.commandLine().getOut();
        Folders folders = house.folders();
        try (Progress progress = new Progress(spec.commandLine().getErr())) {
            progress.stage("Reading the vocabularies and the catalogue");
            Knowledge knowledge = HouseData.knowledge(folders);
            Course course = Course.of(HouseData.visits(file, Optional.ofNullable(visit), knowledge), knowledge);
            ClientVisit read = course.last().visit();
            TextFile.makeFolder(out);
            new ReadingText(terminal, explain).print(read.client(), read.reading());
            course.last().change().ifPresent(new ChangeText(terminal, explain)::print);
            Papers papers = new Papers(Papers.maker(folders, knowledge), course, out);
            if (!read.reading().safety().isClear()) {
                return refuse(terminal, read, papers);
            }
            if (course.last().refers()) {
                terminal.println();
                terminal.println("No program: a clinician looks at it first.");
                return ExitCode.CANNOT;
            }
            progress.stage("Looking for the best program");
            Planning planning = Planning.along(course, knowledge);
            ProgramText text = new ProgramText(terminal, knowledge.catalogue(), explain);
            text.goals(planning.needs().ahead());
            if (planning.result() instanceof Program program) {
                text.print(program);
                progress.stage("Drawing the pictures and printing");
                List<Path> written = papers.program(planning, program, documents, Optional.ofNullable(signedBy));
                terminal.println();
                written.forEach(path -> terminal.println("Wrote " + path));
                return ExitCode.DONE;
            }
            text.printRefusal(planning.result());
            return ExitCode.CANNOT;
        }
    }

    private static Integer refuse(PrintWriter terminal, ClientVisit read, Papers papers) {
        terminal.println();
        terminal.println("No program: the safety answers come first.");
        if (read.reading().safety().needsReferralNote()) {
            Path note = papers.referralNote();
            terminal.println("Wrote " + note);
        }
        return ExitCode.CANNOT;
    }
}
