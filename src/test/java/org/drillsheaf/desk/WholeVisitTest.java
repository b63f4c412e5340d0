package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty desk over a new client to a saved PDF in the real window: by the mouse, and by the keys alone. */
class WholeVisitTest {
    private static final String HANDOUT = "ida-wren-client-handout-2026-11-25.pdf";

    @TempDir
    Path folder;

    @Test
    void byMouse() throws IOException {
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST)) {
            desk.click("Start your own record");
            typeInto(desk, "Your name", "Tamsin Rook");
            typeInto(desk, "Passphrase", "three green kettles");
            typeInto(desk, "The same again", "three green kettles");
            desk.click("Start your own record");
            desk.untilSeen("0 clients");
            desk.clickStarting("New client");
            typeInto(desk, "Name", "Ida Wren");
            typeInto(desk, "Born (year or day)", "1979");
            typeInto(desk, "Stature, cm", "168");
            List.of("wall", "chair", "cushion", "pillow").forEach(desk::click);
            desk.click("Add the client");
            desk.untilSeen("safety questions are open.");
            answerAll(desk, () -> desk.click(nextNo(desk)));
            typeInto(desk, "Side-lying thigh drop, Left, °", "-8");
            typeInto(desk, "Side-lying thigh drop, Right, °", "-10");
            typeInto(desk, "Straight-leg raise, Left, °", "68");
            typeInto(desk, "Straight-leg raise, Right, °", "70");
            desk.untilSeen("2 of 16 tests taken.");
            desk.clickStarting("Reading. ");
            desk.untilSeen("Goals by phase");
            desk.clickStarting("Program. ");
            desk.untilSeen("drills in four phases");
            desk.click("Sign program");
            desk.untilSeen("Signed by Tamsin Rook.");
            desk.clickStarting("Handout. ");
            desk.untilSeen("as they are printed.");
            desk.choose(folder);
            desk.clickStarting("Save PDF");
            desk.untilSeen("Saved: ");
            holdsNameAndDrills(desk, folder.resolve(HANDOUT));
        }
    }

    @Test
    void byKeysAlone() throws IOException {
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST)) {
            desk.until("the first choice has the focus", () -> desk.scene().getFocusOwner() != null);
            tabTo(desk, "Start your own record");
            desk.press(KeyCode.ENTER);
            desk.type("Tamsin Rook");
            desk.press(KeyCode.TAB);
            desk.type("three green kettles");
            desk.press(KeyCode.TAB);
            desk.type("three green kettles");
            desk.press(KeyCode.ENTER);
            desk.untilSeen("0 clients");
            desk.press(KeyCode.CONTROL, KeyCode.N);
            desk.untilSeen("Add the client");
            desk.type("Ida Wren");
            tabTo(desk, "Born (year or day)");
            desk.type("1979");
            tabTo(desk, "Stature, cm");
            desk.type("168");
            for (String thing : List.of("wall", "chair", "cushion", "pillow")) {
                tabTo(desk, thing);
                desk.press(KeyCode.SPACE);
            }
            desk.press(KeyCode.ENTER);
            desk.untilSeen("safety questions are open.");
            desk.until("a question has the focus", () -> desk.scene().getFocusOwner() instanceof ToggleButton);
            answerAll(desk, () -> desk.press(KeyCode.N));
            desk.until("a field has the focus", () -> desk.scene().getFocusOwner() instanceof TextField);
            tabTo(desk, "Side-lying thigh drop, Left, °");
            desk.type("-8");
            desk.press(KeyCode.ENTER);
            assertThat(focused(desk)).isEqualTo("Side-lying thigh drop, Right, °");
            desk.type("-10");
            tabTo(desk, "Straight-leg raise, Left, °");
            desk.type("68");
            desk.press(KeyCode.TAB);
            desk.type("70");
            desk.untilSeen("2 of 16 tests taken.");
            desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
            desk.untilSeen("Goals by phase");
            desk.press(KeyCode.CONTROL, KeyCode.B);
            desk.untilSeen("drills in four phases");
            desk.press(KeyCode.CONTROL, KeyCode.ENTER);
            desk.untilSeen("as they are printed.");
            desk.untilSeen("Signed by Tamsin Rook.");
            desk.choose(folder);
            desk.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.S);
            desk.untilSeen("Saved: ");
            holdsNameAndDrills(desk, folder.resolve(HANDOUT));
        }
    }

    private static void typeInto(DeskRun desk, String field, String text) {
        desk.click(field);
        desk.until("“" + field + "” has the focus", () -> desk.scene().getFocusOwner() instanceof TextField);
        desk.type(text);
    }

    /** Presses Tab until the focus is there; the way must be shorter than twice round the window. */
    private static void tabTo(DeskRun desk, String name) {
        for (int stop = 0; stop < 120; stop++) {
            if (focused(desk).equals(name)) {
                return;
            }
            desk.press(KeyCode.TAB);
        }
        throw new AssertionError("Tab does not reach “" + name + "”");
    }

    private static String focused(DeskRun desk) {
        return DeskRun.fx(() -> Optional.ofNullable(desk.scene().getFocusOwner())
                .map(owner -> owner instanceof TextField ? owner.getAccessibleRoleDescription() : Seen.name(owner))
                .orElse(""));
    }

    private static void answerAll(DeskRun desk, Runnable answer) {
        while (open(desk) > 0) {
            int before = open(desk);
            answer.run();
            desk.until("the answer is read", () -> openNow(desk) < before);
        }
        desk.until(
                "the questions are folded to one line",
                () -> Seen.texts(desk.scene().getRoot()).stream()
                        .noneMatch(t -> t.contains("safety questions are open")));
    }

    /** The button “No” of the first question that has no answer. */
    private static Node nextNo(DeskRun desk) {
        return DeskRun.fx(() -> {
            Node row = desk.scene().getRoot().lookup(".safety-row.open");
            return row.lookupAll(".toggle-button").stream()
                    .filter(b -> "No".equals(((ToggleButton) b).getText()))
                    .findFirst()
                    .orElseThrow();
        });
    }

    private static int open(DeskRun desk) {
        return DeskRun.fx(() -> openNow(desk));
    }

    private static int openNow(DeskRun desk) {
        return client(desk)
                .evaluation()
                .get()
                .flatMap(Evaluation::reading)
                .map(r -> r.safety().unanswered().size())
                .orElse(99);
    }

    private static ClientCase client(DeskRun desk) {
        return desk.window()
                .frame()
                .orElseThrow()
                .clients()
                .openClient()
                .orElseThrow()
                .client();
    }

    private static void holdsNameAndDrills(DeskRun desk, Path pdf) throws IOException {
        Program program = DeskRun.fx(() ->
                client(desk).built().get().flatMap(Evaluation.Built::program).orElseThrow());
        List<String> drills = DeskRun.fx(() -> program.now().entries().stream()
                .map(Entry::drill)
                .map(id -> client(desk)
                        .evaluator()
                        .knowledge()
                        .catalogue()
                        .drill(id)
                        .orElseThrow()
                        .name()
                        .best(List.of("en")))
                .toList());
        assertThat(drills).isNotEmpty();
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text).contains("Ida Wren").contains(drills);
        }
    }
}
