package org.drillsheaf.desk.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.picture.Pictures;
import org.drillsheaf.desk.program.WishesEdit;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.SameThread;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.Pin;
import org.drillsheaf.program.Program;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One client on the desk, without a window: typing, reading, building, saving, taking back, another desk. */
class ClientCaseTest {
    private static final LocalDate VISIT = LocalDate.of(2026, 3, 5);
    private static Knowledge knowledge;
    private static Folders folders;

    @TempDir
    Path folder;

    private Store store;
    private UUID key;
    private ClientCase client;

    @BeforeAll
    static void read() {
        folders = new Folders(Path.of("").toAbsolutePath(), Path.of("no-clinic"));
        knowledge = Knowledge.read(folders, new Problems()).orElseThrow();
    }

    @BeforeEach
    void open() throws Exception {
        store = Store.create(
                new StoreAddress.File(folder.resolve("record.mv.db")),
                Passphrase.of("a long passphrase".toCharArray()),
                DeskRun.TODAY);
        String yaml = Files.readString(Path.of("samples/clients/odile-farrant.yaml"));
        key = store.clients()
                .add(ClientText.parse("odile", yaml, new Problems()).orElseThrow(), "Tamsin Rook");
        client = open(store.clients().load(key).orElseThrow());
    }

    @AfterEach
    void close() {
        client.close();
        store.close();
    }

    private ClientCase open(ClientRecord record) {
        return open(record, new Alone());
    }

    private ClientCase open(ClientRecord record, org.drillsheaf.desk.work.Background background) {
        Workplace workplace = new Workplace(
                folders,
                knowledge,
                store,
                "Tamsin Rook",
                DeskRun.TODAY,
                background,
                Words.in("en"),
                new Pictures(knowledge.catalogue()),
                new DeskRun.Answers());
        return new ClientCase(workplace, new Evaluator(knowledge), record, VISIT);
    }

    private Program program() {
        return client.built().get().flatMap(Evaluation.Built::program).orElseThrow();
    }

    private Optional<String> saved(String path) {
        return store.clients()
                .load(key)
                .flatMap(r -> r.part(PartKey.visit(VISIT)))
                .flatMap(p -> p.content())
                .flatMap(c -> c.value(path));
    }

    @Test
    void whatIsTypedIsReadBuiltAndOnTheDiskAtOnce() {
        int limited = limited();
        client.edit("breath out", "", v -> v.with("/screen/breath-out/value", 12));
        assertThat(limited()).isEqualTo(limited - 1);
        assertThat(client.isBuiltForNow()).isTrue();
        assertThat(saved("/screen/breath-out/value")).contains("12");
        client.undo();
        assertThat(limited()).isEqualTo(limited);
        assertThat(saved("/screen/breath-out/value")).contains("3");
        client.redo();
        assertThat(saved("/screen/breath-out/value")).contains("12");
    }

    @Test
    void aProgramWhoseTaskIsKnownNeedsNoSearchAndIsTheSame() {
        Evaluator evaluator = new Evaluator(knowledge);
        ClientDraft draft = client.draft().get();
        Evaluation first = evaluator.read(draft, VISIT);
        assertThat(evaluator.buildIfKnown(first)).isEmpty();
        evaluator.build(first, () -> false);
        ClientDraft other = draft.with(PartKey.visit(VISIT), draft.visit(VISIT).with("/screen/breath-out/value", 4));
        Evaluation then = evaluator.read(other, VISIT);
        Optional<Program> known = evaluator.buildIfKnown(then).flatMap(Evaluation.Built::program);
        assertThat(known).isPresent();
        assertThat(known)
                .isEqualTo(new Evaluator(knowledge).build(then, () -> false).program());
        assertThat(known).isNotEqualTo(evaluator.build(first, () -> false).program());
    }

    @Test
    void whatIsTakenBackBeforeItWasReadIsNeverShown() {
        Waiting later = new Waiting();
        client.close();
        client = open(store.clients().load(key).orElseThrow(), later);
        later.all();
        Evaluation stands = client.evaluation().get().orElseThrow();
        List<Evaluation> shown = new ArrayList<>();
        client.evaluation().addListener((of, before, now) -> shown.add(now.orElseThrow()));

        client.edit("breath out", "", v -> v.with("/screen/breath-out/value", 12));
        client.undo();
        assertThat(client.isBuiltForNow()).isTrue();
        later.all();

        assertThat(shown).extracting(Evaluation::draft).containsOnly(stands.draft());
        assertThat(client.isBuiltForNow()).isTrue();
    }

    private int limited() {
        return (int) client.evaluation().get().orElseThrow().reading().orElseThrow().findings().stream()
                .filter(f -> f.limited().isTrue())
                .count();
    }

    @Test
    void aPinAndADoseComeBackInTheProgramAndGoWithUndo() {
        Program before = program();
        Entry first = before.now().entries().get(0);
        Phase now = before.start();
        client.edit("left out", "", v -> WishesEdit.pin(v, Pin.Kind.MUST_NOT_HAVE, first.drill(), now));
        assertThat(program().entry(now, first.drill())).isEmpty();
        client.undo();
        assertThat(program()).isEqualTo(before);
        client.edit(
                "dose",
                "",
                v -> WishesEdit.dose(
                        v, first.drill(), now, OptionalInt.of(1), OptionalInt.empty(), OptionalInt.empty()));
        assertThat(program().entry(now, first.drill()))
                .hasValueSatisfying(e -> assertThat(e.dose().sets()).isEqualTo(1));
    }

    @Test
    void aSignatureHoldsForThisVeryProgramOnly() {
        client.sign();
        assertThat(client.signed()).isPresent();
        Entry first = program().now().entries().get(0);
        Phase now = program().start();
        client.edit("left out", "", v -> WishesEdit.pin(v, Pin.Kind.MUST_NOT_HAVE, first.drill(), now));
        assertThat(client.signed()).isEmpty();
        client.undo();
        assertThat(client.signed()).isPresent();
    }

    @Test
    void anOpenSafetyAnswerLeavesNothingToBuild() {
        client.edit("safety", "", v -> v.without("/safety/fever"));
        Evaluation now = client.evaluation().get().orElseThrow();
        assertThat(now.mayBuild()).isFalse();
        assertThat(client.isBuiltForNow()).isFalse();
        assertThat(Missing.of(now.reading()).needed()).extracting(q -> q.id()).containsExactly("fever");
    }

    @Test
    void whatAnotherDeskChangedInTheSameVisitJoinsWhatIsTypedHere() {
        ClientRecord record = store.clients().load(key).orElseThrow();
        Content theirs = record.part(PartKey.visit(VISIT))
                .orElseThrow()
                .content()
                .orElseThrow()
                .with("/screen/toe-touch/value", 2);
        assertThat(store.clients().save(key, PartKey.visit(VISIT), 1, theirs, "Joran"))
                .isInstanceOf(SaveResult.Saved.class);
        client.edit("breath out", "", v -> v.with("/screen/breath-out/value", 12));
        assertThat(client.content().value("/screen/toe-touch/value")).contains("2");
        assertThat(client.content().value("/screen/breath-out/value")).contains("12");
        assertThat(saved("/screen/toe-touch/value")).contains("2");
        assertThat(saved("/screen/breath-out/value")).contains("12");
        assertThat(client.clash().get()).isEmpty();
        assertThat(client.news().get()).matches("Joran changed Standing toe touch: 2 cm now, .* before\\.");
    }

    @Test
    void oneFieldChangedAtTwoDesksWaitsForTheCoach() {
        ClientRecord record = store.clients().load(key).orElseThrow();
        Content theirs = record.part(PartKey.visit(VISIT))
                .orElseThrow()
                .content()
                .orElseThrow()
                .with("/screen/breath-out/value", 8);
        store.clients().save(key, PartKey.visit(VISIT), 1, theirs, "Joran");
        client.edit("breath out", "", v -> v.with("/screen/breath-out/value", 12));
        assertThat(client.clash().get()).isPresent();
        assertThat(saved("/screen/breath-out/value")).contains("8");
        OpenClash.Field field = client.clash().get().orElseThrow().open().get(0);
        assertThat(field.path()).isEqualTo("/screen/breath-out/value");
        client.decide(field, true);
        assertThat(saved("/screen/breath-out/value")).contains("12");
        assertThat(client.content().value("/screen/breath-out/value")).contains("12");
    }

    @Test
    void aClashThatWasLeftOpenIsAskedAgainWhenTheClientIsOpened() {
        PartKey visit = PartKey.visit(VISIT);
        Content theirs = client.content().with("/screen/breath-out/value", 8).with("/screen/toe-touch/value", 2);
        store.clients().save(key, visit, 1, theirs, "Joran");
        client.edit("breath out", "", v -> v.with("/screen/breath-out/value", 12));
        client.close();

        client = open(store.clients().load(key).orElseThrow());
        assertThat(client.content().value("/screen/breath-out/value")).contains("8");
        client.decide(client.clash().get().orElseThrow().open().get(0), true);
        assertThat(client.news().get()).isEqualTo("As you decided: Comfortable breath out, 12 s.");

        assertThat(client.content().value("/screen/breath-out/value")).contains("12");
        assertThat(saved("/screen/breath-out/value")).contains("12");
        assertThat(saved("/screen/toe-touch/value")).contains("2");
        assertThat(store.clients().openClashes(key)).isEmpty();
    }

    @Test
    void aNewVisitStandsBesideTheOldOneAndIsCompared() {
        LocalDate later = LocalDate.of(2026, 4, 16);
        Content copy = client.content().with("/date", later.toString()).with("/screen/breath-out/value", 12);
        client.change("new visit", "", d -> d.with(PartKey.visit(later), copy));
        client.choose(later);
        assertThat(client.evaluation()
                        .get()
                        .orElseThrow()
                        .course()
                        .orElseThrow()
                        .last()
                        .change())
                .isPresent();
        client.undo();
        assertThat(client.visit().get()).isEqualTo(VISIT);
    }

    /**
     * Does everything at once, and hears nothing by itself of what another desk saves: the record tells that on a thread of its own,
     * which in a window comes after what is being done.
     */
    private static final class Alone implements org.drillsheaf.desk.work.Background {
        private final SameThread atOnce = new SameThread();

        @Override
        public <T> void run(
                java.util.concurrent.Callable<T> work,
                java.util.function.Consumer<T> done,
                java.util.function.Consumer<Exception> failed) {
            atOnce.run(work, done, failed);
        }

        @Override
        public void later(java.time.Duration wait, Runnable then) {
            atOnce.later(wait, then);
        }

        @Override
        public void show(Runnable then) {
            // what comes from another thread stays away
        }

        @Override
        public void close() {
            // nothing runs
        }
    }

    /** Keeps work until it is asked for, so that something can happen while it waits. */
    private static final class Waiting implements org.drillsheaf.desk.work.Background {
        private final java.util.Deque<Runnable> works = new java.util.ArrayDeque<>();

        @Override
        public <T> void run(
                java.util.concurrent.Callable<T> work,
                java.util.function.Consumer<T> done,
                java.util.function.Consumer<Exception> failed) {
            works.add(() -> new SameThread().run(work, done, failed));
        }

        @Override
        public void later(java.time.Duration wait, Runnable then) {
            works.add(then);
        }

        @Override
        public void show(Runnable then) {
            then.run();
        }

        @Override
        public void close() {
            works.clear();
        }

        void all() {
            while (!works.isEmpty()) {
                works.remove().run();
            }
        }
    }

    @Test
    void aStoppedSearchGivesWhatItHasPlainlyNotProvedAndCanGoOn() {
        Waiting later = new Waiting();
        try (ClientCase patient = open(store.clients().load(key).orElseThrow(), later)) {
            while (patient.evaluation().get().isEmpty()) {
                later.works.remove().run();
            }
            patient.buildNow();
            patient.stopSearch();
            later.all();

            assertThat(patient.isBuiltForNow()).isTrue();
            assertThat(patient.searchIsLong().get()).isFalse();
            var result = patient.built().get().orElseThrow().planning().result();
            assertThat(result instanceof Program p && p.proof().stopped()
                            || result instanceof org.drillsheaf.program.Undecided u && u.stopped())
                    .as("stopped: " + result.getClass())
                    .isTrue();

            patient.searchAgain();
            later.all();
            assertThat(patient.built().get().flatMap(Evaluation.Built::program))
                    .get()
                    .satisfies(p -> {
                        assertThat(p.proof().stopped()).isFalse();
                        assertThat(p.proof().best()).isTrue();
                    });
        }
    }
}
