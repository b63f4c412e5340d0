package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.PhaseNeeds;
import org.drillsheaf.saying.Speech;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Reads a client's screen and says what it means; stops before any program. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        description = "Reads a client's screen: findings, presentations with for and against, and what to test next.",
        footer = {"", "Exit codes: 0 read, 1 a safety answer stops or holds the program, 2 bad input."})
final class ReadCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HouseOption house = new HouseOption();

    @CommandLine.Mixin
    private ClientOption client = new ClientOption();

    @Option(
            names = "--visit",
            paramLabel = "<date>",
            description = "The visit to read, for example 2026-03-05; the last one by default.")
    private @Nullable LocalDate visit;

    @Option(names = "--explain", description = "Print every rule and every finding in full.")
    private boolean explain;

    @Option(names = "--format", defaultValue = "text", description = "text or json (default: ${DEFAULT-VALUE}).")
    private Format format;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Folders folders = house.folders();
        try (ClientAtWork atWork = client.open();
                Progress progress = new Progress(spec.commandLine().getErr())) {
            progress.stage("Reading the vocabularies and the catalogue");
            Knowledge knowledge = HouseData.knowledge(folders);
            Course course = Course.of(atWork.visits(Optional.ofNullable(visit), knowledge), knowledge);
            ClientVisit read = course.last().visit();
            Speech speech = knowledge.vocabulary().speech("en");
            if (format == Format.json) {
                out.println(Json.text(
                        ReadingJson.of(
                                course.last(),
                                read.reading().safety().isClear() ? goals(course.last(), knowledge) : List.of()),
                        speech));
            } else {
                new ReadingText(out, speech, explain).print(read.client(), read.reading());
                course.last().change().ifPresent(new ChangeText(out, speech, explain)::print);
                if (read.reading().safety().isClear()) {
                    new ProgramText(out, speech, explain).goals(goals(course.last(), knowledge));
                }
            }
            return read.reading().safety().isClear() ? ExitCode.DONE : ExitCode.CANNOT;
        }
    }

    /** What the phases from the next one on ask for. */
    private static List<PhaseNeeds> goals(Course.Stop stop, Knowledge knowledge) {
        ClientVisit read = stop.visit();
        Needs needs = knowledge
                .needsMaker()
                .first(read.client(), read.reading(), read.safety(), read.wishes(), read.gates(knowledge));
        return needs.phases().subList(stop.phase().ordinal(), needs.phases().size());
    }
}
