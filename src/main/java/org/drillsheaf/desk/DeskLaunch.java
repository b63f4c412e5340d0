package org.drillsheaf.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.drillsheaf.Problem;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.look.Look;
import org.drillsheaf.desk.setting.SettingsFile;
import org.drillsheaf.desk.work.ThreadBackground;

/** Starts the window and stays until it is closed. Needs no class that extends the toolkit's own application. */
public final class DeskLaunch {
    private static final int THREADS = 3;

    private DeskLaunch() {}

    /** Whether this machine says that it has a display. */
    public static boolean hasDisplay() {
        return !isLinux() || isSet("DISPLAY") || isSet("WAYLAND_DISPLAY");
    }

    private static boolean isSet(String variable) {
        String value = System.getenv(variable);
        return value != null && !value.isBlank();
    }

    private static boolean isLinux() {
        return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
    }

    /**
     * Shows the window and waits until it is closed.
     *
     * @param settings what this desk remembers
     * @param records folder for a new record
     * @return why no window could be shown; empty when one was
     */
    public static List<Problem> run(Folders folders, SettingsFile settings, Path records) {
        // One line about the class path at every start is nothing a coach can use.
        Logger toolkit = Logger.getLogger("javafx");
        toolkit.setLevel(Level.SEVERE);
        CountDownLatch closed = new CountDownLatch(1);
        try {
            Platform.startup(() -> {
                Look.prepare();
                Stage stage = new Stage();
                stage.setOnHidden(e -> closed.countDown());
                new DeskWindow(
                                stage,
                                folders,
                                settings,
                                records,
                                Clock.systemDefaultZone(),
                                new ThreadBackground(THREADS),
                                new StageDialogs(stage))
                        .show();
            });
            closed.await();
            return List.of();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of();
        } catch (UnsupportedOperationException | IllegalStateException | LinkageError e) {
            return List.of(noWindow(e));
        } catch (RuntimeException e) {
            return List.of(noWindow(e.getCause() == null ? e : e.getCause()));
        }
    }

    private static Problem noWindow(Throwable reason) {
        String why = String.valueOf(reason.getMessage()).lines().findFirst().orElse("");
        return noWindow(why, isLinux() ? MissingPackages.onThisMachine() : List.of(), hasDisplay());
    }

    /**
     * What to tell when the toolkit could not start.
     *
     * @param why the toolkit's own words
     * @param packages of the system that are missing
     */
    static Problem noWindow(String why, List<String> packages, boolean hasDisplay) {
        String noDisplay = "There is no display here";
        if (!packages.isEmpty()) {
            return Problem.error(
                    "the window",
                    0,
                    "This machine lacks what a window needs" + (hasDisplay ? "" : ". " + noDisplay + " either"),
                    "Install " + String.join(", ", packages) + " (on Debian and Ubuntu: apt-get install "
                            + String.join(" ", packages) + ")"
                            + (hasDisplay ? "" : " and start it in a desktop session"));
        }
        return hasDisplay
                ? Problem.error(
                        "the window",
                        0,
                        "The display cannot be used (" + why + ")",
                        "Look whether the screen named by DISPLAY is there and may be used; the other commands need"
                                + " none")
                : Problem.error(
                        "the window",
                        0,
                        noDisplay,
                        "Start it in a desktop session; the other commands need none, see drillsheaf --help");
    }
}
