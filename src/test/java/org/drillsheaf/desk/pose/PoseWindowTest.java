package org.drillsheaf.desk.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.drillsheaf.Side;
import org.drillsheaf.desk.Seen;
import org.drillsheaf.desk.Window;
import org.drillsheaf.desk.drill.Draft;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.ThreadBackground;
import org.drillsheaf.figure.pose.PoseFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Drives the real window. */
class PoseWindowTest {
    /** Never closed: what is still being drawn when a test ends must not disturb the next. */
    private static final ThreadBackground BACKGROUND = new ThreadBackground(2);

    private final Draft draft = PoseModelTest.draft(PoseModelTest.library("wall-march"));
    private PoseModel model;
    private PoseView view;
    private Window window;

    @BeforeEach
    void open() {
        window = Window.open(
                () -> {
                    Words words = Words.in("en");
                    model = new PoseModel(draft, words, BACKGROUND);
                    view = new PoseView(model, words, BACKGROUND);
                    return view;
                },
                DeskSettings.FIRST);
        window.until("the figure is drawn", () -> view.panes().values().stream().allMatch(FigurePane::isDrawn));
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void aJointIsPulledAndPutBack() {
        String before = draft.now().text();

        window.pull(grip(Grip.KNEE), 40, -60);

        window.until("the pull is written", () -> draft.changed().get() && !model.isTurning());
        assertThat(draft.undoable().get().orElseThrow()).startsWith("Hip");
        assertThat(draft.now().at("/pose/start/joints/hip/flex").isInt()).isTrue();
        window.on(() -> {
            draft.undo();
            return null;
        });
        assertThat(draft.now().text()).isEqualTo(before);
    }

    @Test
    void theKeyboardAloneTurnsJointsViewsAndKeyframes() {
        window.on(() -> {
            grip(Grip.HIP).requestFocus();
            return null;
        });
        long before = hip();

        window.press(KeyCode.RIGHT);
        window.press(KeyCode.SHIFT, KeyCode.RIGHT);
        assertThat(hip()).isEqualTo(before + 6);
        window.press(KeyCode.END);
        assertThat(hip()).isEqualTo(145);
        window.press(KeyCode.DIGIT0);
        assertThat(hip()).isZero();

        window.press(KeyCode.CLOSE_BRACKET);
        assertThat(model.frame().get()).isEqualTo(PoseFrame.MOVE);
        window.press(KeyCode.OPEN_BRACKET);
        assertThat(model.frame().get()).isEqualTo(PoseFrame.START);
        window.press(KeyCode.V);
        window.until(
                "one view is large",
                () -> view.panes().get("side").isVisible()
                        && !view.panes().get("front").isVisible());

        Node first = window.scene().getFocusOwner();
        window.press(KeyCode.TAB);
        assertThat(window.scene().getFocusOwner())
                .isInstanceOf(GripHandle.class)
                .isNotSameAs(first);
    }

    @Test
    void withLargeLettersOneViewIsLargeAndTheOthersAreChosen() {
        assertThat(shown()).containsExactly("side", "three-quarter", "front", "above");
        window.look(DeskSettings.FIRST.scaled(200));
        window.until("one view is there", () -> shown().equals(List.of("side")));
        assertThat(Seen.texts(view)).contains("Side", "Front").doesNotContain("All four");
        double height = view.panes().get("side").getHeight();
        assertThat(height).as("of a window of 760").isGreaterThan(360);

        window.on(() -> {
            grip(Grip.HIP).requestFocus();
            return null;
        });
        window.press(KeyCode.V);
        assertThat(shown()).containsExactly("three-quarter");
        window.press(KeyCode.V);
        window.press(KeyCode.V);
        window.press(KeyCode.V);
        assertThat(shown()).containsExactly("side");

        window.on(() -> {
            view.show("all");
            return null;
        });
        window.look(DeskSettings.FIRST);
        window.until("all four are there again", () -> shown().size() == 4);
    }

    /** The views that are to be seen. */
    private List<String> shown() {
        return view.panes().entrySet().stream()
                .filter(p -> p.getValue().isVisible())
                .map(Map.Entry::getKey)
                .toList();
    }

    @Test
    void everythingThatCanBeUsedHasAName() {
        window.on(() -> {
            view.lookupAll(".part-line").forEach(n -> ((javafx.scene.control.Button) n).fire());
            return null;
        });

        assertThat(window.nameless()).isEmpty();
        assertThat(grip(Grip.KNEE).getAccessibleText())
                .startsWith("Knee right, bend")
                .contains("−15 – 155°");
    }

    private long hip() {
        return draft.now().at("/pose/start/joints/hip/flex").longValue();
    }

    private GripHandle grip(Grip grip) {
        return Optional.ofNullable(view.panes().get("side").grips().get(new Grip.At(grip, Optional.of(Side.RIGHT))))
                .orElseThrow();
    }
}
