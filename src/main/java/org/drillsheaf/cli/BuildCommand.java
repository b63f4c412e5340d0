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
import org.drillsheaf.program.Program;
import org.drillsheaf.saying.Speech;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** The main job: a screen in, a reading, a program and a handout out. */
@Command(
        name = "build",
        mixinStandardHelpOptions = true,
        description = "Reads a client's screen, builds the program and prints the handout.",
        footer = {
            "",
            "Exit codes: 0 done, 1 cannot be done (a safety answer, or nothing fits; the reason is printed), 2 bad"
                    + " input."
        })
final class BuildCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HouseOption house = new HouseOption();

    @CommandLine.Mixin
    private ClientOption client = new ClientOption();

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
            names = "--why-not",
            paramLabel = "<drill>",
            split = ",",
            description =
                    "Say why this drill is not in, or what it would cost to have it; for one that is in, what the "
                            + "program would lose without it. May be given several times.")
    private List<String> whyNot = List.of();

    @Option(
            names = "--what-if",
            paramLabel = "<change>",
            split = ",",
            description =
                    "Say what a change would gain: equipment=band, equipment (every missing piece) or minutes=+5. "
                            + "May be given several times.")
    private List<String> whatIf = List.of();

    @Option(names = "--format", defaultValue = "text", description = "text or json (default: ${DEFAULT-VALUE}).")
    private Format format = Format.text;

    @CommandLine.Mixin
    private PapersOption asked = new PapersOption();

    @Override
    public Integer call() {
        PrintWriter terminal = spec.commandLine().getOut();
        Folders folders = house.folders();
        try (ClientAtWork atWork = client.open();
                Progress progress = new Progress(spec.commandLine().getErr())) {
            progress.stage("Reading the vocabularies and the catalogue");
            Knowledge knowledge = HouseData.knowledge(folders);
            Course course = Course.of(atWork.visits(Optional.ofNullable(visit), knowledge), knowledge);
            ClientVisit read = course.last().visit();
            ProgramQuestions questions = ProgramQuestions.of(whyNot, whatIf, knowledge.catalogue(), read.client());
            TextFile.makeFolder(out);
            Papers papers = new Papers(Papers.maker(folders, knowledge), course, out);
            Speech speech = knowledge.vocabulary().speech("en");
            BuildReport report = format == Format.json
                    ? new BuildReport.Machine(terminal, speech)
                    : new BuildReport.Terminal(terminal, speech, explain);
            report.reading(course.last());
            Optional<RecordPapers> record =
                    atWork.record().map(open -> new RecordPapers(open, folders, knowledge, atWork.yaml()));
            if (!read.reading().safety().isClear()) {
                Optional<Path> note = read.reading().safety().needsReferralNote()
                        ? Optional.of(referralNote(papers, record))
                        : Optional.empty();
                report.noProgram("the safety answers come first", note);
                return ExitCode.CANNOT;
            }
            if (course.last().refers()) {
                report.noProgram("a clinician looks at it first", Optional.empty());
                return ExitCode.CANNOT;
            }
            progress.stage("Looking for the best program");
            Planning planning = Planning.along(course, knowledge);
            if (!(planning.result() instanceof Program program)) {
                report.refused(planning);
                return ExitCode.CANNOT;
            }
            report.program(planning, program);
            if (questions.any()) {
                progress.stage("Answering the questions");
                report.answers(questions.answer(planning.explainer(program, knowledge)));
            }
            progress.stage("Drawing the pictures and printing");
            List<Papers.Made> made = papers.make(planning, program, asked.documents(), asked.signedBy());
            record.ifPresent(kept -> report.kept(kept.keep(program, read, asked.signedBy(), made)));
            report.written(papers.write(program, made));
            return ExitCode.DONE;
        }
    }

    private static Path referralNote(Papers papers, Optional<RecordPapers> record) {
        Papers.Made note = papers.referralNote();
        record.ifPresent(kept -> kept.handOut(note, Optional.empty()));
        return papers.write(note);
    }
}
