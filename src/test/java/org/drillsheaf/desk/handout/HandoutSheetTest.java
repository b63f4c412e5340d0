package org.drillsheaf.desk.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Print;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.Seen;
import org.drillsheaf.desk.Window;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.client.Evaluator;
import org.drillsheaf.desk.picture.Pictures;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Going;
import org.drillsheaf.desk.work.ThreadBackground;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet with the papers, in a real window: the coach's own words, and what may leave the house. */
class HandoutSheetTest {
    private static final LocalDate VISIT = LocalDate.of(2026, 3, 5);
    private static final List<DocumentKind> OF_A_PROGRAM =
            List.of(DocumentKind.CLIENT_HANDOUT, DocumentKind.REMINDER_CARD, DocumentKind.PRACTICE_LOG);

    private static final Folders FOLDERS = new Folders(Path.of("").toAbsolutePath(), Path.of("no-clinic"));
    private static Knowledge knowledge;

    @TempDir
    Path folder;

    private final ThreadBackground background = new ThreadBackground(2);
    private Store store;
    private UUID key;
    private ClientCase client;
    private HandoutSheet sheet;
    private Window window;

    @BeforeAll
    static void read() {
        knowledge = Knowledge.read(FOLDERS, new Problems()).orElseThrow();
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
        DeskRun.Answers files = new DeskRun.Answers();
        window = Window.open(
                () -> {
                    client = new ClientCase(
                            new Workplace(
                                    FOLDERS,
                                    knowledge,
                                    store,
                                    "Tamsin Rook",
                                    DeskRun.TODAY,
                                    background,
                                    Words.in("en"),
                                    new Pictures(knowledge.catalogue()),
                                    files),
                            new Evaluator(knowledge),
                            store.clients().load(key).orElseThrow(),
                            VISIT);
                    sheet = new HandoutSheet(client);
                    return new StackPane(sheet.content());
                },
                DeskSettings.FIRST);
        window.until("the program is built", () -> client.isBuiltForNow());
        window.on(() -> {
            sheet.shown();
            return true;
        });
    }

    @AfterEach
    void close() {
        window.on(() -> {
            client.close();
            return true;
        });
        background.close();
        store.close();
        window.close();
    }

    private Optional<String> kept() {
        return store.clients()
                .load(key)
                .flatMap(r -> r.part(PartKey.visit(VISIT)))
                .flatMap(p -> p.content())
                .flatMap(c -> c.value("/handout-note"));
    }

    private TextArea words() {
        return window.on(() -> (TextArea) window.scene().getRoot().lookup(".text-area"));
    }

    @Test
    void ownWordsAreKeptWithTheVisitPrintedFrozenAndTakenBack() {
        TextArea area = words();
        window.on(() -> {
            area.requestFocus();
            return true;
        });
        window.type("Ring me\u0007 on Friday.");
        window.until("the words are on the disk", () -> kept().equals(Optional.of("Ring me on Friday.")));
        window.until(
                "the program stands for them",
                () -> client.isBuiltForNow()
                        && client.evaluation()
                                .get()
                                .filter(e -> e.draft() == client.draft().get())
                                .isPresent());
        window.on(() -> {
            client.sign();
            return true;
        });
        window.until("it is signed", () -> client.signed().isPresent());

        HandoutModel model = new HandoutModel(client);
        HandoutModel.Made made =
                model.make(window.on(model::first), window.on(model::source).orElseThrow());
        model.keep(made);

        var paper = store.documents().list(key).get(0);
        String frozen = new String(store.documents().inputs(paper).get("client.yaml"), StandardCharsets.UTF_8);
        assertThat(frozen).contains("Ring me on Friday.");

        window.press(KeyCode.CONTROL, KeyCode.Z);
        window.until(
                "they are taken back", () -> kept().isEmpty() && area.getText().isEmpty());
        window.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        window.until(
                "they are there again",
                () -> kept().isPresent() && area.getText().startsWith("Ring me"));
        window.on(() -> {
            area.appendText("x".repeat(5000));
            return true;
        });
        assertThat(window.on(() -> Seen.texts(window.scene().getRoot())))
                .anyMatch(text -> text.contains("No more than 5000"));
        assertThat(window.on(area::getLength)).isLessThan(100);
    }

    @Test
    void noPaperOfAnUnsignedProgramIsPrintedSavedOrMailed() {
        HandoutModel model = new HandoutModel(client);
        for (DocumentKind kind : OF_A_PROGRAM) {
            assertThat(window.on(() -> model.notPrinted(kind))).as(kind.id()).isPresent();
            press(kind);
            for (String name : List.of("Print handout", "Save PDF", "Save for e-mail")) {
                Node button = window.on(
                        () -> Seen.find(window.scene().getRoot(), name).orElseThrow());
                assertThat(window.on(() -> button.getStyleClass().contains("not-ready")))
                        .as(kind.id() + ", " + name)
                        .isTrue();
            }
        }
        press(DocumentKind.COACH_SHEET);
        assertThat(window.on(() -> model.notPrinted(DocumentKind.COACH_SHEET))).isEmpty();
        window.until("the sheet is made", () -> Seen.pictures(window.scene().getRoot()) > 0);
        assertThat(window.on(() -> client.evaluation().get().map(Evaluation::mayBuild)))
                .contains(true);
    }

    @Test
    void anOpenSafetyAnswerHoldsEverythingMadeFromTheProgramEvenWhenItWasSigned() {
        window.on(() -> {
            client.sign();
            return true;
        });
        window.until("it is signed", () -> client.signed().isPresent());
        HandoutModel model = new HandoutModel(client);
        assertThat(window.on(() -> model.notPrinted(DocumentKind.CLIENT_HANDOUT)))
                .isEmpty();

        window.on(() -> {
            client.edit("safety", "", v -> v.with("/safety/chest", "yes"));
            return true;
        });
        window.until(
                "it is read",
                () -> client.evaluation().get().filter(e -> !e.mayBuild()).isPresent());

        for (DocumentKind kind : OF_A_PROGRAM) {
            assertThat(window.on(() -> model.notPrinted(kind))).as(kind.id()).isPresent();
        }
        assertThat(window.on(() -> model.notPrinted(DocumentKind.COACH_SHEET))).isPresent();
        assertThat(window.on(() -> model.notPrinted(DocumentKind.REFERRAL_NOTE)))
                .isEmpty();
    }

    @Test
    void papersOfSeveralClientsAreOnlyThoseThatAreSignedAndCanBeStopped() throws Exception {
        String other = Files.readString(Path.of("samples/clients/bram-okonjo.yaml"));
        store.clients().add(ClientText.parse("bram", other, new Problems()).orElseThrow(), "Tamsin Rook");
        window.on(() -> {
            client.sign();
            return true;
        });
        window.until("it is signed", () -> client.signed().isPresent());
        Path out = Files.createDirectories(folder.resolve("papers"));
        Batch batch = new Batch(client.workplace());

        Batch.Outcome outcome =
                batch.print(store.clients().list(), List.of(DocumentKind.CLIENT_HANDOUT), out, new Going());

        assertThat(outcome.printed()).singleElement().satisfies(file -> assertThat(file)
                .hasFileName("odile-farrant-client-handout-2026-03-05.pdf")
                .isNotEmptyFile());
        assertThat(outcome.left()).singleElement().asString().startsWith("Bram Okonjo: ");
        assertThat(store.documents().list(key)).as("kept as handed out").hasSize(1);

        Going stopped = new Going();
        stopped.stop();
        assertThat(batch.print(store.clients().list(), List.of(DocumentKind.CLIENT_HANDOUT), out, stopped))
                .satisfies(o -> assertThat(o.stopped()).isTrue())
                .satisfies(o -> assertThat(o.printed()).isEmpty());
    }

    @Test
    void nothingPaintedOfAClientIsKeptWhileTheWindowIsLocked() {
        window.until("the pages are painted", () -> Seen.pictures(window.scene().getRoot()) > 0);
        window.on(() -> {
            sheet.locked();
            return true;
        });
        assertThat(window.on(() -> Seen.pictures(window.scene().getRoot()))).isZero();
        window.on(() -> {
            sheet.shown();
            return true;
        });
        window.until("the pages are back", () -> Seen.pictures(window.scene().getRoot()) > 0);
    }

    @Test
    void largePrintIsForWhatTheClientReadsUntilTheCoachAsksForIt() {
        window.on(() -> {
            client.change(
                    "print",
                    "",
                    d -> d.with(PartKey.CLIENT, d.part(PartKey.CLIENT).with("/print", "large")));
            return true;
        });
        window.until("large print is read", () -> client.evaluation()
                .get()
                .flatMap(Evaluation::visit)
                .filter(v -> v.client().print() == Print.LARGE)
                .isPresent());

        press(DocumentKind.REMINDER_CARD);
        assertThat(size("Large")).isTrue();
        press(DocumentKind.COACH_SHEET);
        assertThat(size("Standard")).isTrue();
        window.on(() -> {
            segment("Large").fire();
            return true;
        });
        assertThat(size("Large")).isTrue();
        press(DocumentKind.REFERRAL_NOTE);
        assertThat(size("Large")).as("asked for once, kept").isTrue();
    }

    private ToggleButton segment(String size) {
        return (ToggleButton)
                Seen.find(window.scene().getRoot(), "Print: " + size).orElseThrow();
    }

    private boolean size(String taken) {
        return window.on(() -> segment(taken).isSelected());
    }

    private void press(DocumentKind kind) {
        window.on(() -> {
            ((javafx.scene.control.RadioButton)
                            Seen.find(window.scene().getRoot(), Words.in("en").text("document." + kind.id()))
                                    .orElseThrow())
                    .fire();
            return true;
        });
    }
}
