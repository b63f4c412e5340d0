package org.drillsheaf.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.drillsheaf.desk.look.Look;
import org.drillsheaf.desk.setting.DeskSettings;

/** One part of the desk in a window of its own, driven by real keys and clicks. */
public final class Window implements AutoCloseable {
    private static final long PATIENCE_MILLISECONDS = 60_000;

    private final Stage stage;

    private Window(Stage stage) {
        this.stage = stage;
    }

    /** Opens a window of 1240 × 760 with the content in it. */
    public static Window open(Callable<? extends Parent> content, DeskSettings settings) {
        DeskRun.startToolkit();
        return DeskRun.fx(() -> {
            Stage stage = new Stage();
            Scene scene = new Scene(content.call(), 1240, 760);
            Look.dress(scene, settings);
            stage.setScene(scene);
            stage.setX(0);
            stage.setY(0);
            stage.show();
            stage.toFront();
            stage.requestFocus(); // windows of earlier tests may still hold the keys
            return new Window(stage);
        });
    }

    public <T> T on(Callable<T> work) {
        return DeskRun.fx(work);
    }

    /** Waits until something is so. */
    public void until(String what, BooleanSupplier so) {
        long end = System.currentTimeMillis() + PATIENCE_MILLISECONDS;
        while (!DeskRun.fx(so::getAsBoolean)) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError("waited in vain until " + what);
            }
            try {
                Thread.sleep(15);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** Changes how the window looks. */
    public void look(DeskSettings settings) {
        on(() -> {
            Look.dress(scene(), settings);
            return true;
        });
        settle();
    }

    public Scene scene() {
        return stage.getScene();
    }

    /** Presses keys together, the last one while the others are held. */
    public void press(KeyCode... keys) {
        until("the window has the keys", stage::isFocused);
        settle();
        on(() -> {
            Robot robot = new Robot();
            for (KeyCode key : keys) {
                robot.keyPress(key);
            }
            for (int i = keys.length - 1; i >= 0; i--) {
                robot.keyRelease(keys[i]);
            }
            return true;
        });
        settle();
    }

    /** Types letters into what has the focus. */
    public void type(String text) {
        until("something has the focus", () -> scene().getFocusOwner() != null);
        settle();
        for (char letter : text.toCharArray()) {
            on(() -> {
                javafx.event.Event.fireEvent(
                        scene().getFocusOwner(),
                        new javafx.scene.input.KeyEvent(
                                javafx.scene.input.KeyEvent.KEY_TYPED,
                                String.valueOf(letter),
                                "",
                                KeyCode.UNDEFINED,
                                false,
                                false,
                                false,
                                false));
                return true;
            });
        }
        settle();
    }

    /** Presses on a node, moves in steps, lets go. */
    public void pull(Node node, double across, double down) {
        Point2D from = on(() -> {
            Bounds bounds = node.localToScreen(node.getBoundsInLocal());
            return new Point2D(bounds.getCenterX(), bounds.getCenterY());
        });
        Robot robot = on(Robot::new);
        on(() -> {
            robot.mouseMove(from);
            robot.mousePress(MouseButton.PRIMARY);
            return true;
        });
        for (int i = 1; i <= 4; i++) {
            Point2D to = from.add(across * i / 4, down * i / 4);
            on(() -> {
                robot.mouseMove(to);
                return true;
            });
            settle();
        }
        on(() -> {
            robot.mouseRelease(MouseButton.PRIMARY);
            return true;
        });
        settle();
    }

    private void settle() {
        DeskRun.settle(this::scene);
    }

    /** Things one can use that a screen reader could not name. */
    public List<String> nameless() {
        return on(() -> {
            List<String> found = new ArrayList<>();
            Seen.walk(scene().getRoot(), node -> {
                boolean inChoice = node.getParent() instanceof javafx.scene.control.ComboBoxBase<?>;
                if (node.isFocusTraversable() && !inChoice && Seen.name(node).isEmpty()) {
                    found.add(node.toString());
                }
            });
            return found;
        });
    }

    @Override
    public void close() {
        on(() -> {
            stage.hide();
            return true;
        });
    }
}
