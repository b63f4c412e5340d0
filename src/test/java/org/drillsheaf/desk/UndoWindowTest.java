package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.ClientDraft;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.program.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever can be changed in a visit is taken back by Ctrl Z and done again by Ctrl Shift Z, in the real window. */
class UndoWindowTest {
    private static final String FIELD = "Sway-back stance, hip ahead, cm";

    @TempDir
    Path folder;

    private DeskRun desk;

    @Test
    void everyChangeOfAVisitIsTakenBackAndDoneAgain() {
        try (DeskRun run = DeskRun.start(folder, DeskSettings.FIRST)) {
            desk = run;
            desk.click("Open the demo clinic");
            desk.click("Odile Farrant");
            desk.untilSeen("16 of 16 tests taken.");
            screen();
            desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
            desk.untilSeen("Goals by phase");
            desk.until("a goal has the focus", () -> isFocused("WeightCell"));
            takenBack("a goal's weight", () -> desk.press(KeyCode.DIGIT0));
            program();
            person();
            desk.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.N);
            takenBack("a new visit", () -> desk.press(KeyCode.ENTER));
        }
    }

    private void screen() {
        desk.click(FIELD);
        takenBack("a typed value", () -> desk.type("7"));
        takenBack("pain", () -> desk.press(KeyCode.P));
        takenBack("not tested", () -> desk.press(KeyCode.N));
        takenBack("a mark", () -> desk.click(other("Squat depth", "pelvis tucks: ")));
        desk.click("Show");
        desk.untilSeen("Not sure");
        desk.until("who unfolds goes on there", () -> Seen.name(desk.scene().getFocusOwner())
                .equals("Fold"));
        takenBack("a safety answer", () -> {
            desk.click(DeskRun.fx(() -> notSure("Surgery")));
            desk.untilSeen("Body part");
            desk.untilSeen("Written on");
            desk.until("the answer has the focus", () -> desk.scene().getFocusOwner() instanceof ToggleButton);
        });
        theLastAnswerDoesNotRunOn();
    }

    /** N means no up to the last question, and not tested in the table below. */
    private void theLastAnswerDoesNotRunOn() {
        DeskRun.fx(() -> {
            List<Node> questions = List.copyOf(desk.scene().getRoot().lookupAll(".safety-row"));
            questions.get(questions.size() - 1).lookup(".toggle-button").requestFocus();
            return true;
        });
        desk.press(KeyCode.N);
        desk.until("the first field has the focus", () -> desk.scene().getFocusOwner() instanceof TextField);
        ClientDraft answered = draft();
        desk.press(KeyCode.N);
        desk.untilSeen("The safety questions are done");
        assertThat(draft()).as("one N too many").isEqualTo(answered);
        takenBack("not tested after the questions", () -> desk.press(KeyCode.N));
    }

    private Node notSure(String question) {
        return desk.scene().getRoot().lookupAll(".toggle-button").stream()
                .filter(b -> Seen.name(b).startsWith(question) && "Not sure".equals(((ToggleButton) b).getText()))
                .findFirst()
                .orElseThrow();
    }

    private Node other(String row, String mark) {
        return DeskRun.fx(() -> List.of("Yes", "No").stream()
                .map(answer -> (ToggleButton)
                        Seen.find(desk.scene().getRoot(), mark + answer).orElseThrow())
                .filter(b -> !b.isSelected())
                .findFirst()
                .orElseThrow());
    }

    private void program() {
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        desk.until("the program is built", () -> client().isBuiltForNow());
        desk.until("a drill has the focus", () -> isFocused("EntryView"));
        takenBack("a pin", () -> desk.press(KeyCode.K));
        takenBack("a dose", () -> desk.press(KeyCode.MINUS));
        takenBack("another order", () -> desk.press(KeyCode.ALT, KeyCode.DOWN));
        takenBack("a drill left out", () -> desk.press(KeyCode.DELETE));
        takenBack("a swap", () -> {
            openAlternatives();
            desk.press(KeyCode.ENTER);
        });
    }

    /** Opens the panel of the first drill, from the one in hand downwards, that another could take the place of. */
    private void openAlternatives() {
        for (int drill = 0; drill < 6; drill++) {
            desk.press(KeyCode.S);
            desk.untilSeen("What could take its place");
            if (DeskRun.fx(() -> desk.scene().getFocusOwner().getStyleClass().contains("swap-row"))) {
                return;
            }
            desk.press(KeyCode.ESCAPE);
            desk.until("the drill has the focus again", () -> isFocused("EntryView"));
            desk.press(KeyCode.DOWN);
        }
        throw new AssertionError("no drill has an alternative");
    }

    private void person() {
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT1);
        takenBack("a word about the person", () -> {
            desk.click("Person and conditions");
            desk.click("Called (on paper)");
            desk.press(KeyCode.CONTROL, KeyCode.A);
            desk.type("Odi");
            desk.press(KeyCode.ENTER);
        });
    }

    /** Does it, takes it back, does it again, takes it back: draft and program are each time what they were. */
    private void takenBack(String what, Runnable change) {
        ClientDraft before = draft();
        Program program = program(what);
        change.run();
        desk.until(what + " is done", () -> !now().equals(before));
        ClientDraft after = draft();
        desk.press(KeyCode.CONTROL, KeyCode.Z);
        desk.until(what + " is taken back", () -> now().equals(before));
        desk.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        desk.until(what + " is done again", () -> now().equals(after));
        desk.press(KeyCode.CONTROL, KeyCode.Z);
        desk.until(what + " is taken back again", () -> now().equals(before));
        assertThat(program(what)).as("the program after " + what).isEqualTo(program);
    }

    private Program program(String what) {
        desk.until("the program stands for what is typed before " + what, () -> client().isBuiltForNow());
        return DeskRun.fx(
                () -> client().built().get().flatMap(Evaluation.Built::program).orElseThrow());
    }

    private boolean isFocused(String kind) {
        Node owner = desk.scene().getFocusOwner();
        return owner != null && owner.getClass().getSimpleName().equals(kind);
    }

    private ClientDraft draft() {
        return DeskRun.fx(this::now);
    }

    private ClientDraft now() {
        return client().draft().get();
    }

    private ClientCase client() {
        return desk.window()
                .frame()
                .orElseThrow()
                .clients()
                .openClient()
                .orElseThrow()
                .client();
    }
}
