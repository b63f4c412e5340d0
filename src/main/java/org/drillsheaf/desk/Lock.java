package org.drillsheaf.desk;

import java.time.Clock;
import java.time.LocalTime;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.InputEvent;
import javafx.scene.input.MouseEvent;
import javafx.util.Duration;
import org.drillsheaf.desk.frame.FrameView;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.start.UnlockView;
import org.drillsheaf.desk.words.Words;

/**
 * Locks the window, when the coach says so or nobody has touched key or mouse for a while, and opens it to who knows the
 * passphrase. Belongs to the toolkit's thread.
 */
final class Lock {
    private final PauseTransition idle = new PauseTransition();
    private final Clock clock;
    private final Room room;
    private boolean locked;

    /** What the lock asks of the window. */
    interface Room {
        Words words();

        DeskSettings settings();

        /** What is locked; empty while no record is open. */
        Optional<FrameView> frame();

        boolean opens(char[] passphrase);

        /** Shows a page in the whole window. */
        void show(Parent page, String title);

        /** The coach is back. */
        void goOn();

        void quit();
    }

    Lock(Scene scene, Clock clock, Room room) {
        this.clock = clock;
        this.room = room;
        scene.addEventFilter(InputEvent.ANY, e -> {
            if (room.settings().idleMinutes() > 0 && isSomebody(e)) {
                idle.playFromStart();
            }
        });
        idle.setOnFinished(e -> {
            if (!locked) {
                lock(room.words().text("lock.idle", room.settings().idleMinutes()));
            }
        });
    }

    /** What moves under a mouse at rest, such as news of another desk, is nobody at this one. */
    private static boolean isSomebody(InputEvent event) {
        return event.getEventType() != MouseEvent.MOUSE_ENTERED
                && event.getEventType() != MouseEvent.MOUSE_ENTERED_TARGET
                && event.getEventType() != MouseEvent.MOUSE_EXITED
                && event.getEventType() != MouseEvent.MOUSE_EXITED_TARGET;
    }

    /** Counts the idle minutes anew. */
    void startCounting() {
        idle.stop();
        if (room.settings().idleMinutes() > 0) {
            idle.setDuration(Duration.minutes(room.settings().idleMinutes()));
            idle.playFromStart();
        }
    }

    void stopCounting() {
        idle.stop();
    }

    /** Counts until nobody is there any more; ends with the lock. */
    PauseTransition idle() {
        return idle;
    }

    void lock() {
        lock(room.words().text("lock.more"));
    }

    private void lock(String more) {
        if (room.frame().isEmpty()) {
            return;
        }
        locked = true;
        room.frame().get().locked();
        Words words = room.words();
        UnlockView[] view = new UnlockView[1];
        view[0] = new UnlockView(
                words,
                words.text("lock.title", words.time(LocalTime.now(clock))),
                more,
                typed -> {
                    if (room.opens(typed)) {
                        locked = false;
                        room.goOn();
                    } else {
                        view[0].tell(words.text("lock.wrong"), "");
                    }
                },
                Optional.empty(),
                room::quit);
        room.show(view[0], words.text("lock.window"));
        view[0].ready();
    }
}
