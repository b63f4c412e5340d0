package org.drillsheaf.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.frame.FrameView;
import org.drillsheaf.desk.look.IntoSight;
import org.drillsheaf.desk.look.Look;
import org.drillsheaf.desk.picture.Pictures;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.setting.SettingsFile;
import org.drillsheaf.desk.start.Opening;
import org.drillsheaf.desk.start.StartView;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.Restoring;
import org.jspecify.annotations.Nullable;

/** The one window: first page, unlocking, the frame, the lock. Belongs to the toolkit's thread. */
public final class DeskWindow implements FrameView.Actions, Entrance.Door, Lock.Room {
    private static final double WIDTH = 1440;
    private static final double HEIGHT = 900;

    private final Stage stage;
    private final Scene scene;
    private final Folders folders;
    private final SettingsFile file;
    private final Clock clock;
    private final Background background;
    private final Dialogs dialogs;
    private final Opening opening;
    private final Entrance entrance;
    private final Lock lock;
    private DeskSettings settings;
    private Words words;
    private char[] passphrase = new char[0];
    private @Nullable Workplace workplace;
    private @Nullable FrameView frame;

    /** @param records folder for the demo clinic and for a new record */
    public DeskWindow(
            Stage stage,
            Folders folders,
            SettingsFile file,
            Path records,
            Clock clock,
            Background background,
            Dialogs dialogs) {
        this.stage = stage;
        this.folders = folders;
        this.file = file;
        this.clock = clock;
        this.background = background;
        this.dialogs = dialogs;
        this.opening = new Opening(folders, records, clock);
        this.entrance = new Entrance(folders, records, opening, background, dialogs, this);
        this.settings = file.read();
        this.words = Words.in(settings.language());
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        this.scene = new Scene(
                new javafx.scene.layout.StackPane(),
                Math.min(WIDTH, screen.getWidth()),
                Math.min(HEIGHT, screen.getHeight()));
        IntoSight.follow(scene);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, DeskWindow::enterPresses);
        this.lock = new Lock(scene, clock, this);
        stage.setScene(scene);
        stage.setTitle("Drillsheaf");
        stage.setOnCloseRequest(e -> quit());
    }

    /** Enter presses the button that has the focus, on every platform. */
    private static void enterPresses(KeyEvent key) {
        if (key.getCode() == KeyCode.ENTER
                && key.getTarget() instanceof ButtonBase button
                && (button instanceof Button || button.getClass() == ToggleButton.class)
                && !key.isShortcutDown()
                && !key.isAltDown()) {
            button.fire();
            key.consume();
        }
    }

    /** Shows the first page: the passphrase of the record this desk knows, or what a new desk can do. */
    public void show() {
        entrance.open();
        stage.show();
    }

    @Override
    public void show(Parent page) {
        scene.setRoot(page);
        Look.dress(scene, settings);
    }

    @Override
    public Parent page() {
        return scene.getRoot();
    }

    @Override
    public Words words() {
        return words;
    }

    @Override
    public void enter(Opening.Opened opened, char[] typed, DeskSettings then) {
        passphrase = typed.clone();
        if (!then.record().isEmpty()) {
            settings = then;
            file.write(settings);
        }
        enter(opened, then.coach());
    }

    private void enter(Opening.Opened opened, String coach) {
        workplace = new Workplace(
                folders,
                opened.knowledge(),
                opened.store(),
                coach,
                clock,
                background,
                words,
                new Pictures(opened.knowledge().catalogue()),
                dialogs);
        showFrame(workplace);
        keepCatalogue(workplace);
    }

    /** The record keeps every edition of every drill; what is new in the catalogue goes in while the coach is at work. */
    private void keepCatalogue(Workplace w) {
        background.run(
                () -> w.store().drills().takeIn(w.knowledge().vocabulary().library(), w.coach()),
                taken -> {},
                e -> {}); // the record is away or closed already: it goes in the next time
    }

    private void showFrame(Workplace place) {
        if (frame != null) {
            frame.close();
        }
        FrameView made = new FrameView(place, this);
        frame = made;
        goOn();
        lock.startCounting();
    }

    @Override
    public void goOn() {
        FrameView shown = java.util.Objects.requireNonNull(frame);
        show(
                shown,
                words.text(
                        "window.title",
                        java.util.Objects.requireNonNull(workplace).coach()));
        shown.applyCss(); // the menu hears its keys only once it has its skin; a busy machine may paint late
        shown.ready();
    }

    @Override
    public void show(Parent page, String title) {
        show(page);
        stage.setTitle(title);
    }

    /** The frame, once a record is open. */
    @Override
    public Optional<FrameView> frame() {
        return Optional.ofNullable(frame);
    }

    /** What every page works with, once a record is open. */
    public Optional<Workplace> workplace() {
        return Optional.ofNullable(workplace);
    }

    public Scene scene() {
        return scene;
    }

    @Override
    public void lock() {
        lock.lock();
    }

    /** The lock and what it counts. */
    Lock lockOfWindow() {
        return lock;
    }

    @Override
    public boolean opens(char[] typed) {
        return Arrays.equals(typed, passphrase);
    }

    @Override
    public DeskSettings settings() {
        return settings;
    }

    @Override
    public void settings(DeskSettings changed) {
        boolean otherWords = !changed.language().equals(settings.language());
        settings = changed;
        file.write(changed);
        if (!otherWords) {
            Look.dress(scene, settings);
            if (scene.getRoot() instanceof StartView) {
                entrance.startPage();
            }
            lock.startCounting();
            return;
        }
        words = Words.in(changed.language());
        if (workplace != null) {
            workplace = workplace.in(words);
            showFrame(workplace);
        } else {
            entrance.startPage();
        }
    }

    @Override
    public void passphrase(char[] old, char[] fresh, Consumer<String> told) {
        if (!opens(old)) {
            told.accept(words.text("lock.wrong"));
            return;
        }
        rewrite(
                record -> {
                    new Restoring(record, clock)
                            .changePassphrase(
                                    Passphrase.of(old),
                                    Passphrase.of(fresh),
                                    java.util.Objects.requireNonNull(workplace).coach());
                    return fresh;
                },
                "record.passphrase-changed");
    }

    @Override
    public void restore(StoreAddress.File backup, Optional<char[]> then) {
        char[] theirs = then.orElse(passphrase).clone();
        rewrite(
                record -> {
                    new Restoring(record, clock)
                            .restore(
                                    backup,
                                    Passphrase.of(theirs),
                                    java.util.Objects.requireNonNull(workplace).coach());
                    return theirs;
                },
                "record.is-back");
    }

    /** Gives the passphrase that holds afterwards. */
    private interface Rewriting {
        char[] of(StoreAddress.File record);
    }

    /** Closes the record, has its file written anew, and opens it again; if that fails, the file is as it was and opens too. */
    private void rewrite(Rewriting work, String done) {
        Workplace before = java.util.Objects.requireNonNull(workplace);
        StoreAddress.File record = (StoreAddress.File) before.store().address();
        char[] now = passphrase.clone();
        if (frame != null) {
            frame.close();
        }
        String[] wrong = new String[1];
        background.run(
                () -> {
                    before.store().close();
                    char[] fresh = now;
                    try {
                        fresh = work.of(record);
                    } catch (StoreFailure e) {
                        wrong[0] = e.problem().what() + ". " + e.problem().remedy() + ".";
                    }
                    return new Reopened(opening.open(record, fresh), fresh);
                },
                back -> {
                    passphrase = back.passphrase().clone();
                    enter(back.opened(), before.coach());
                    frame().ifPresent(f -> f.tell(wrong[0] == null ? words.text(done) : wrong[0]));
                },
                entrance::backAfter);
    }

    private record Reopened(Opening.Opened opened, char[] passphrase) {}

    @Override
    public void readAgain() {
        Problems problems = new Problems();
        background.run(
                () -> Knowledge.read(folders, problems),
                read -> {
                    if (read.isPresent() && workplace != null) {
                        renew(workplace, read.get());
                    } else {
                        problems.all().stream().findFirst().ifPresent(p -> frame().ifPresent(f -> f.tell(p.message())));
                    }
                },
                e -> frame().ifPresent(f -> f.tell(String.valueOf(e.getMessage()))));
    }

    private void renew(Workplace w, Knowledge knowledge) {
        Workplace now = w.with(knowledge);
        workplace = now;
        frame().ifPresent(f -> f.renew(now));
        w.pictures().close();
        keepCatalogue(now);
    }

    @Override
    public void leave() {
        closeRecord();
        entrance.startPage();
    }

    private void closeRecord() {
        if (frame != null) {
            frame.close();
            frame = null;
        }
        if (workplace != null) {
            Workplace leaving = workplace;
            workplace = null;
            leaving.pictures().close();
            // What is on its way to the record is through when this work's turn comes.
            background.run(
                    () -> {
                        leaving.store().close();
                        return true;
                    },
                    done -> {},
                    e -> {});
        }
        Arrays.fill(passphrase, '\0');
    }

    @Override
    public void quit() {
        end();
        Platform.exit();
    }

    /** Closes the record and the window; whatever was typed is on the disk afterwards. */
    void end() {
        lock.stopCounting();
        closeRecord();
        stage.hide();
        background.close();
    }
}
