package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.drillsheaf.handout.PdfProof;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Printing programs that were built before, one or many. */
class PrintCommandTest {
    @TempDir
    private static Path built;

    @TempDir
    private Path out;

    private static Path program;

    @BeforeAll
    static void build() {
        CommandRun run = CommandRun.of("build", "samples/clients/odile-farrant.yaml", "--out", built.toString());
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        program = built.resolve("odile-farrant-program.yaml");
    }

    @Test
    void printsTheSameBytesAsTheBuildDid() throws IOException {
        CommandRun run = print(List.of(program));

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).contains("Printed 1.");
        assertThat(out.resolve("odile-farrant-handout.pdf"))
                .hasSameBinaryContentAs(built.resolve("odile-farrant-handout.pdf"));
    }

    @Test
    void languagePaperAndPrintMayBeAskedFor() {
        CommandRun run = print(List.of(program), "--language", "es", "--paper", "letter", "--large");

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        assertThat(PdfProof.taggedText(pdf("odile-farrant-handout-es.pdf"))).contains("esta es su práctica");
    }

    @Test
    void aClientsLargePrintIsForWhatTheClientReadsAndTheCoachAsksForIt() throws IOException {
        Path clients = Files.createDirectories(built.resolve("clients"));
        String client = Files.readString(Path.of("samples/clients/odile-farrant.yaml"));
        Files.writeString(clients.resolve("odile-farrant.yaml"), client.replace("print: standard", "print: large"));
        List<String> both = List.of("--document", "reminder-card,coach-sheet");
        Path largeClient = print(built.resolve("large-client"), clients, both);
        Path standardClient = print(built.resolve("standard-client"), Path.of("samples/clients"), both);
        Path asked = print(
                built.resolve("asked"),
                Path.of("samples/clients"),
                List.of("--document", "reminder-card,coach-sheet", "--large"));

        assertThat(largeClient.resolve("odile-farrant-coach-sheet.pdf"))
                .hasSameBinaryContentAs(standardClient.resolve("odile-farrant-coach-sheet.pdf"));
        assertThat(largeClient.resolve("odile-farrant-reminder-card.pdf"))
                .hasSameBinaryContentAs(asked.resolve("odile-farrant-reminder-card.pdf"));
        assertThat(Files.readAllBytes(asked.resolve("odile-farrant-coach-sheet.pdf")))
                .isNotEqualTo(Files.readAllBytes(standardClient.resolve("odile-farrant-coach-sheet.pdf")));
        assertThat(Files.readAllBytes(asked.resolve("odile-farrant-reminder-card.pdf")))
                .isNotEqualTo(Files.readAllBytes(standardClient.resolve("odile-farrant-reminder-card.pdf")));
    }

    private static Path print(Path out, Path clients, List<String> more) {
        List<String> arguments =
                new ArrayList<>(List.of("print", "--clients", clients.toString(), "--out", out.toString()));
        arguments.addAll(more);
        arguments.add(program.toString());
        CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        return out;
    }

    @Test
    void whatIsFinishedIsNotPrintedAgainUntilItsInputChanges() throws IOException {
        print(List.of(program));
        assertThat(print(List.of(program)).out()).contains("Printed 0, 1 were finished before.");

        assertThat(print(List.of(program), "--signed-by", "Tamsin Rook").out()).contains("Printed 1.");

        Files.writeString(out.resolve("odile-farrant-handout.pdf"), "cut off");
        assertThat(print(List.of(program), "--signed-by", "Tamsin Rook").out()).contains("Printed 1.");
    }

    @Test
    void aBadOneIsToldAndTheOthersArePrinted() throws IOException {
        String text = Files.readString(program);
        Path changed = copy("changed", text.replaceFirst("sha-256: \"[0-9a-f]{8}", "sha-256: \"00000000"));
        Path broken = copy("broken", "client: [");
        Path stranger = copy("stranger", text.replaceFirst("client: \\S+", "client: nobody-here"));

        CommandRun run = print(List.of(changed, broken, program, stranger, built.resolve("missing.yaml")));

        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.out()).contains("Printed 1; 4 programs were not printed whole.");
        assertThat(run.err())
                .contains("has changed since the program was built", "broken-program.yaml")
                .contains("The file of its client, nobody-here.yaml, is not in", "There is no such file")
                .doesNotContain("Exception");
        assertThat(out.resolve("odile-farrant-handout.pdf")).exists();
        assertThat(out.resolve("changed-handout.pdf")).doesNotExist();
    }

    @Test
    void twoProgramsNeverShareOnePaper() {
        CommandRun run = print(List.of(program, program));

        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.err()).contains("It would be printed over the papers of");
    }

    @Test
    void unknownPaperAndLanguageAreRefused() {
        assertThat(print(List.of(program), "--paper", "A7").err()).contains("There is no paper “A7”");
        assertThat(print(List.of(program), "--language", "../en").err()).contains("no phrases for the language");
    }

    /** The process is killed without warning; whatever lies there under its name is whole, and the next run ends the work. */
    @Test
    void aKilledRunLeavesNoHalfFileAndGoesOnWhereItStopped() throws IOException, InterruptedException {
        List<Path> programs = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            programs.add(copy("client-" + i, Files.readString(program)));
        }
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                // As the launcher does; the validator's Saxon would write the same metadata in other bytes.
                "-Djavax.xml.transform.TransformerFactory=com.sun.org.apache.xalan.internal.xsltc.trax.TransformerFactoryImpl",
                "-cp",
                System.getProperty("java.class.path"),
                Drillsheaf.class.getName()));
        command.addAll(arguments(programs));
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        Path record = out.resolve(".printed");
        while (!(Files.exists(record) && Files.size(record) > 0) && process.isAlive()) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        process.destroyForcibly().waitFor();
        assertThat(process.exitValue()).as("killed, not finished").isNotZero();

        List<Path> before = papers();
        assertThat(before).isNotEmpty().allSatisfy(paper -> assertThat(PdfProof.taggedText(Files.readAllBytes(paper)))
                .contains("Odile, this is your practice"));
        CommandRun run = print(programs);
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).containsPattern("Printed \\d+, \\d+ were finished before");
        assertThat(papers()).hasSize(16).allSatisfy(paper -> assertThat(paper)
                .hasSameBinaryContentAs(built.resolve("odile-farrant-handout.pdf")));
        assertThat(print(programs).out()).contains("Printed 0, 16 were finished before.");
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.map(f -> f.getFileName().toString())).noneMatch(name -> name.endsWith(".part"));
        }
    }

    private List<Path> papers() throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.filter(f -> f.toString().endsWith(".pdf")).toList();
        }
    }

    private static Path copy(String name, String text) throws IOException {
        return Files.writeString(built.resolve(name + "-program.yaml"), text);
    }

    private byte[] pdf(String name) {
        try {
            return Files.readAllBytes(out.resolve(name));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private List<String> arguments(List<Path> programs, String... more) {
        List<String> arguments =
                new ArrayList<>(List.of("print", "--clients", "samples/clients", "--out", out.toString()));
        arguments.addAll(List.of(more));
        programs.forEach(p -> arguments.add(p.toString()));
        return arguments;
    }

    private CommandRun print(List<Path> programs, String... more) {
        return CommandRun.of(arguments(programs, more).toArray(String[]::new));
    }
}
