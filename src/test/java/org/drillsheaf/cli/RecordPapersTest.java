package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.FrozenPaper;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.KeptProgram;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was handed out comes out of the record again byte for byte, whatever was changed since. */
class RecordPapersTest {
    private static final String COACH = "Ines Calloway";
    private static final int VERSIONS = 10;
    private static final DocumentKind PAPER = DocumentKind.REMINDER_CARD; // the quickest with every drill on it

    @TempDir
    private Path folder;

    private record Kept(KeptProgram program, byte[] first) {}

    @Test
    void tenVersionsOfAProgramAreEachPrintedAgainAsTheyWereThoughADrillWasEditedInBetween() throws IOException {
        Folders folders = HouseData.folders().withClinic(Files.createDirectories(folder.resolve("clinic")));
        try (Passphrase passphrase = Passphrase.of("six otters on a wet brook".toCharArray());
                Store store =
                        Store.create(new StoreAddress.File(folder.resolve("record")), passphrase, Clock.systemUTC())) {
            UUID client = add(store);
            OpenRecord record = new OpenRecord(store, client, COACH);
            List<Kept> versions = new ArrayList<>();
            Knowledge knowledge = HouseData.knowledge(folders);
            DocumentMaker maker = Papers.maker(folders, knowledge);
            Planning planning = plan(record, knowledge);
            for (int version = 1; version <= VERSIONS; version++) {
                if (version == VERSIONS / 2 + 1) {
                    edit(versions.get(0).program(), folders);
                    knowledge = HouseData.knowledge(folders);
                    maker = Papers.maker(folders, knowledge);
                    planning = plan(record, knowledge);
                }
                callClient(store, client, "Edwin " + version);
                versions.add(handOut(record, folders, knowledge, maker, planning));
            }
            assertThat(versions.stream().map(kept -> kept.program().version()))
                    .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
            assertThat(versions.stream().map(kept -> new String(kept.first())).distinct())
                    .hasSize(VERSIONS);

            RecordPrint print = new RecordPrint(
                    folders, knowledge, maker, List.of(PAPER), List.of(Optional.empty()), own -> own, folder);
            for (Kept kept : versions) {
                RecordPrint.Outcome outcome = print.print(
                        record,
                        new RecordPrint.Wanted(
                                Optional.empty(), Optional.of(kept.program().version())),
                        Optional.empty());
                assertThat(outcome).isEqualTo(new RecordPrint.Outcome(1, 0));
                assertThat(folder.resolve("edwin-tarrow-reminder-card.pdf")).hasBinaryContent(kept.first());
            }
            assertThat(store.documents().list(client)).hasSize(VERSIONS);
            for (int version : List.of(1, VERSIONS)) {
                assertThat(drawnAgain(store, versions.get(version - 1).program()))
                        .as("version " + version + " from its frozen inputs")
                        .isEqualTo(versions.get(version - 1).first());
            }
        }
    }

    private static UUID add(Store store) throws IOException {
        String yaml = Files.readString(Path.of("samples/clients/edwin-tarrow.yaml"));
        return store.clients()
                .add(ClientText.parse("edwin-tarrow.yaml", yaml, new Problems()).orElseThrow(), COACH);
    }

    /** Something that makes the next version's paper another one. */
    private static void callClient(Store store, UUID client, String name) {
        Part part =
                store.clients().load(client).orElseThrow().part(PartKey.CLIENT).orElseThrow();
        store.clients()
                .save(
                        client,
                        PartKey.CLIENT,
                        part.version(),
                        part.content().orElseThrow().with("/called", name),
                        COACH);
    }

    private static Planning plan(OpenRecord record, Knowledge knowledge) {
        return Planning.along(course(ClientAtWork.of(record), knowledge), knowledge);
    }

    private static Course course(ClientAtWork client, Knowledge knowledge) {
        return Course.of(client.visits(Optional.empty(), knowledge), knowledge);
    }

    private static Kept handOut(
            OpenRecord record, Folders folders, Knowledge knowledge, DocumentMaker maker, Planning planning) {
        ClientAtWork client = ClientAtWork.of(record);
        Course course = course(client, knowledge);
        Program program = (Program) planning.result();
        List<Papers.Made> made =
                new Papers(maker, course, folders.clinic()).make(planning, program, List.of(PAPER), Optional.of(COACH));
        String words = new RecordPapers(record, folders, knowledge, client.yaml())
                .keep(program, course.last().visit(), Optional.of(COACH), made);
        assertThat(words).contains("papers handed out: 1");
        KeptProgram kept = record.store().programs().list(record.client()).get(0);
        return new Kept(kept, made.get(0).pdf());
    }

    /** The clinic writes its own version of a drill of the program. */
    private static void edit(KeptProgram program, Folders folders) throws IOException {
        String drill = program.yaml().replaceAll("(?s)^.*? drill: (\\S+).*$", "$1");
        String starter = Files.readString(folders.catalogue().resolve(drill + ".yaml"));
        String own = starter.replaceFirst("revision: (\\d+)", "revision: 1\nbased-on: $1")
                .replaceFirst("(?s)(purpose:.*?en: )", "$1Ours now. ");
        assertThat(own).contains("Ours now.");
        Path drills = Files.createDirectories(folders.clinic().resolve("exercise-library"));
        Files.writeString(drills.resolve(drill + ".yaml"), own);
    }

    private static byte[] drawnAgain(Store store, KeptProgram program) throws IOException {
        HandedOut document = store.documents().list(program.client()).stream()
                .filter(d -> d.program().equals(Optional.of(program.key())))
                .findFirst()
                .orElseThrow();
        FrozenPaper frozen = FrozenPaper.of(store.documents().inputs(document)).orElseThrow();
        Problems problems = new Problems();
        Optional<byte[]> pdf = frozen.draw(problems);
        assertThat(problems.all()).isEmpty();
        return pdf.orElseThrow();
    }

    @Test
    void theCommandsWorkOnTheRecordAsOnFiles() throws IOException {
        String record = folder.resolve("record.mv.db").toString();
        Path key = Files.writeString(folder.resolve("key"), "six otters on a wet brook");
        Files.setPosixFilePermissions(key, java.nio.file.attribute.PosixFilePermissions.fromString("rw-------"));
        String out = folder.resolve("out").toString();
        String[] on = {"--store", record, "--passphrase-file", key.toString()};
        done("store", "create", record, "--passphrase-file", key.toString());
        done(on, "store", "add", "samples/clients/edwin-tarrow.yaml");

        assertThat(done(on, "read", "tarrow").out())
                .isEqualTo(done("read", "samples/clients/edwin-tarrow.yaml").out());
        assertThat(done(on, "build", "edwin-tarrow", "--out", out).out())
                .contains("version 1 of the program of 2026-05-06, not yet checked");
        assertThat(done(on, "print", "edwin-tarrow", "--out", out).out()).contains("handed out before: 0");
        assertThat(done(on, "print", "edwin-tarrow", "--out", out, "--signed-by", COACH)
                        .out())
                .as("now it counts as handed out")
                .contains("handed out before: 0");
        byte[] signed = Files.readAllBytes(folder.resolve("out/edwin-tarrow-handout.pdf"));
        Files.delete(folder.resolve("out/edwin-tarrow-handout.pdf"));
        assertThat(done(on, "print", "Edwin", "--out", out).out()).contains("handed out before: 1");
        assertThat(folder.resolve("out/edwin-tarrow-handout.pdf")).hasBinaryContent(signed);
        assertThat(done(on, "store", "verify", "--redraw").out())
                .contains("1 paper drawn again, byte for byte the same");

        String[] nobody = {"print", "lise-varga", "--out", out};
        assertThat(run(on, nobody).err()).contains("No client of the record is called so");
    }

    private static CommandRun done(String... arguments) {
        CommandRun run = CommandRun.of(arguments);
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        return run;
    }

    private static CommandRun done(String[] on, String... arguments) {
        CommandRun run = run(on, arguments);
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        return run;
    }

    private static CommandRun run(String[] on, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of(on));
        return CommandRun.of(all.toArray(String[]::new));
    }
}
