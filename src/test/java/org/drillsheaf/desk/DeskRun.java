package org.drillsheaf.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.look.Look;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.setting.SettingsFile;
import org.drillsheaf.desk.work.ThreadBackground;

/** A real window without a display, driven by real keys and clicks. */
public final class DeskRun implements AutoCloseable {
    /** Today at the desk. */
    public static final Clock TODAY = Clock.fixed(Instant.parse("2026-11-25T10:42:00Z"), ZoneOffset.UTC);

    private static final long PATIENCE_MILLISECONDS = 120_000;
    private static final List<Throwable> UNCAUGHT = new CopyOnWriteArrayList<>();
    private static boolean started;

    private final DeskWindow window;
    private final Stage stage;
    private final Answers files;

    /** Files that the window asks for and opens. */
    public static final class Answers implements Dialogs {
        private Optional<Path> next = Optional.empty();
        private final List<Path> shown = new ArrayList<>();

        @Override
        public Optional<Path> save(String title, String proposedName) {
            return next.map(folder -> folder.resolve(proposedName));
        }

        @Override
        public Optional<Path> folder(String title) {
            return next;
        }

        @Override
        public List<Path> open(String title, String what, String... endings) {
            return next.stream().toList();
        }

        @Override
        public boolean show(Path file) {
            shown.add(file);
            return true;
        }
    }

    private DeskRun(DeskWindow window, Stage stage, Answers files) {
        this.window = window;
        this.stage = stage;
        this.files = files;
    }

    /** Shows the window on its first page. Settings and records lie in the folder. */
    public static DeskRun start(Path folder, DeskSettings settings) {
        startToolkit();
        SettingsFile file = new SettingsFile(folder.resolve("desk.properties"));
        if (!Files.exists(file.file())) {
            file.write(settings);
        }
        Folders folders = new Folders(Path.of("").toAbsolutePath(), folder.resolve("no-clinic"));
        return fx(() -> {
            Stage stage = new Stage();
            Answers files = new Answers();
            DeskWindow window = new DeskWindow(stage, folders, file, folder, TODAY, new ThreadBackground(3), files);
            window.show();
            return new DeskRun(window, stage, files);
        });
    }

    /** Starts the toolkit once for all tests. */
    public static synchronized void startToolkit() {
        if (started) {
            return;
        }
        started = true;
        CompletableFuture<Boolean> up = new CompletableFuture<>();
        try {
            Platform.startup(() -> up.complete(true));
        } catch (IllegalStateException e) {
            up.complete(true); // another test has started it
        }
        Platform.setImplicitExit(false);
        up.join();
        fx(() -> {
            Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> {
                failure.printStackTrace();
                UNCAUGHT.add(failure);
            });
            Look.prepare();
            return true;
        });
    }

    /** Runs something on the toolkit's thread and waits for it. */
    public static <T> T fx(Callable<T> work) {
        CompletableFuture<T> result = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                result.complete(work.call());
            } catch (Exception | AssertionError e) {
                result.completeExceptionally(e);
            }
        });
        try {
            return result.get();
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e.getCause() == null ? e : e.getCause());
        }
    }

    /** Waits until something holds, and what came with it is laid out. */
    public void until(String what, BooleanSupplier holds) {
        long end = System.currentTimeMillis() + PATIENCE_MILLISECONDS;
        while (!fx(holds::getAsBoolean)) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError("waited in vain until " + what + "; the window shows: "
                        + fx(() -> Seen.texts(scene().getRoot())));
            }
            try {
                Thread.sleep(15);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        settle();
    }

    /** Waits until a text is to be seen. */
    public void untilSeen(String text) {
        until("“" + text + "” is to be seen", () -> Seen.texts(scene().getRoot()).stream()
                .anyMatch(t -> t.contains(text)));
    }

    public DeskWindow window() {
        return window;
    }

    public Scene scene() {
        return window.scene();
    }

    /** Gives this window the keys when several are open. */
    public void toFront() {
        fx(() -> {
            stage.toFront();
            stage.requestFocus();
            return true;
        });
        until("the window has the keys", stage::isFocused);
    }

    /** The folder in which the next saved file lands, or the file that is opened. */
    public void choose(Path path) {
        files.next = Optional.of(path);
    }

    /** Files that were handed to the machine's own programs. */
    public List<Path> shown() {
        return List.copyOf(files.shown);
    }

    /** Presses keys together, the last one while the others are held. */
    public void press(KeyCode... keys) {
        fx(() -> {
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

    /** Types letters, digits, spaces and signs by their keys, into whatever has the focus. */
    public void type(String text) {
        for (char sign : text.toCharArray()) {
            fx(() -> {
                Robot robot = new Robot();
                boolean shift = Character.isUpperCase(sign);
                if (shift) {
                    robot.keyPress(KeyCode.SHIFT);
                }
                robot.keyType(key(sign));
                if (shift) {
                    robot.keyRelease(KeyCode.SHIFT);
                }
                return true;
            });
        }
        settle();
    }

    private static KeyCode key(char sign) {
        return switch (sign) {
            case ' ' -> KeyCode.SPACE;
            case '-' -> KeyCode.MINUS;
            case '.' -> KeyCode.PERIOD;
            case ',' -> KeyCode.COMMA;
            default -> KeyCode.getKeyCode(String.valueOf(Character.toUpperCase(sign)));
        };
    }

    /** Clicks the middle of what shows this text or has this name for screen readers. */
    public void click(String text) {
        until("“" + text + "” can be clicked", () -> Seen.find(scene().getRoot(), text)
                .isPresent());
        Node node = fx(() -> Seen.find(scene().getRoot(), text).orElseThrow());
        click(node);
    }

    /** Clicks what has a name for screen readers that begins so. */
    public void clickStarting(String name) {
        until("“" + name + "…” can be clicked", () -> Seen.findStarting(scene().getRoot(), name)
                .isPresent());
        Node node = fx(() -> Seen.findStarting(scene().getRoot(), name).orElseThrow());
        click(node);
    }

    /** Clicks the middle of a node; turns the wheel until it is in sight. */
    public void click(Node node) {
        wheelTo(node);
        fx(() -> {
            Robot robot = new Robot();
            var bounds = node.localToScreen(node.getBoundsInLocal());
            robot.mouseMove(bounds.getMinX() + bounds.getWidth() / 2, bounds.getMinY() + bounds.getHeight() / 2);
            robot.mouseClick(javafx.scene.input.MouseButton.PRIMARY);
            return true;
        });
        settle();
    }

    private void wheelTo(Node node) {
        Optional<ScrollPane> around = fx(() -> scrollPaneAround(node));
        for (int turn = 0; around.isPresent() && turn < 60; turn++) {
            int way = fx(() -> {
                Bounds view = around.get().localToScreen(around.get().getBoundsInLocal());
                Bounds there = node.localToScreen(node.getBoundsInLocal());
                return there.getMinY() < view.getMinY() ? -1 : there.getMaxY() > view.getMaxY() ? 1 : 0;
            });
            if (way == 0) {
                return;
            }
            fx(() -> {
                Bounds view = around.get().localToScreen(around.get().getBoundsInLocal());
                Robot robot = new Robot();
                robot.mouseMove(view.getMinX() + 6, view.getCenterY()); // in the middle a text area may take the wheel
                // the robot without a display counts the other way round, and in dots: a notch of a wheel is some 40
                robot.mouseWheel(-way * 40);
                return true;
            });
            settle();
        }
        if (around.isPresent()) {
            throw new AssertionError("the wheel does not bring “" + Seen.name(node) + "” into sight");
        }
    }

    private static Optional<ScrollPane> scrollPaneAround(Node node) {
        for (Node n = node.getParent(); n != null; n = n.getParent()) {
            if (n instanceof ScrollPane pane) {
                return Optional.of(pane);
            }
        }
        return Optional.empty();
    }

    /**
     * Lets the toolkit take what has just arrived, and lay it out: a control that is not laid out yet hears no key and no click.
     * A window that has gone is not waited for.
     */
    public void settle() {
        settle(this::scene);
    }

    /** The same for the scene that a window shows now. */
    static void settle(Supplier<Scene> shown) {
        CompletableFuture<Boolean> laidOut = new CompletableFuture<>();
        Runnable once = () -> laidOut.complete(true);
        Scene scene = fx(() -> {
            Scene now = shown.get();
            now.addPostLayoutPulseListener(once);
            Platform.requestNextPulse();
            return now;
        });
        laidOut.completeOnTimeout(false, 1, TimeUnit.SECONDS).join();
        fx(() -> {
            scene.removePostLayoutPulseListener(once);
            return true;
        });
    }

    /** The window as it is painted now. */
    public void photograph(Path file, int width, int height) {
        fx(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
            return true;
        });
        settle();
        WritableImage image = fx(() -> {
            Parent root = scene().getRoot();
            root.applyCss();
            root.layout();
            return scene().snapshot(null);
        });
        int w = (int) image.getWidth();
        int h = (int) image.getHeight();
        int[] pixels = new int[w * h];
        image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
        SmallPng.write(pixels, w, h, file);
    }

    @Override
    public void close() {
        fx(() -> {
            window.end();
            return true;
        });
        List<Throwable> failures = List.copyOf(UNCAUGHT);
        UNCAUGHT.clear();
        if (!failures.isEmpty()) {
            throw new AssertionError("something broke in the window meanwhile", failures.get(0));
        }
    }
}
