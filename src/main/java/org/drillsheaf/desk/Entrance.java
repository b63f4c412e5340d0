package org.drillsheaf.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.picture.Well;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.start.Opening;
import org.drillsheaf.desk.start.StartPicture;
import org.drillsheaf.desk.start.StartView;
import org.drillsheaf.desk.start.UnlockView;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.store.sql.StoreAddress;

/** The way in: what a new desk can do, or the passphrase of the record that this desk knows. Belongs to the toolkit's thread. */
final class Entrance implements StartView.Actions {
    private static final Duration AFTER_FIRST_FRAME = Duration.ofMillis(100);

    private final Folders folders;
    private final Path records;
    private final Opening opening;
    private final Background background;
    private final Dialogs dialogs;
    private final Door door;

    /** What the way in asks of the window. */
    interface Door {
        DeskSettings settings();

        void settings(DeskSettings changed);

        Words words();

        /** Shows a page in the whole window. */
        void show(Parent page);

        /** The page in the window. */
        Parent page();

        /**
         * A record is open.
         *
         * @param then what the desk remembers from now on; without a record for the demo clinic, which it does not
         */
        void enter(Opening.Opened opened, char[] passphrase, DeskSettings then);

        void quit();
    }

    Entrance(Folders folders, Path records, Opening opening, Background background, Dialogs dialogs, Door door) {
        this.folders = folders;
        this.records = records;
        this.opening = opening;
        this.background = background;
        this.dialogs = dialogs;
        this.door = door;
    }

    /** Shows the page that this desk begins with. */
    void open() {
        if (isKnown(door.settings().record())) {
            unlockPage();
        } else {
            startPage();
        }
    }

    private static boolean isKnown(String record) {
        return !record.isEmpty()
                && (!(StoreAddress.of(record) instanceof StoreAddress.File local) || Files.exists(local.file()));
    }

    void startPage() {
        Words words = door.words();
        Well picture = new Well(words.text("start.picture"));
        door.show(new StartView(words, door.settings(), picture, this));
        // The picture is drawn once the page itself is painted.
        background.later(
                AFTER_FIRST_FRAME,
                () -> background.run(
                        () -> StartPicture.draw(folders),
                        image -> picture.show(words.text("start.picture"), new SimpleObjectProperty<>(image)),
                        e -> {}));
    }

    private void unlockPage() {
        Words words = door.words();
        Button other = Buttons.link(words.text("unlock.other"), this::startPage);
        UnlockView view = new UnlockView(
                words,
                words.text("unlock.title"),
                record(words, door.settings().record()),
                this::unlock,
                Optional.of(other),
                door::quit);
        door.show(view);
        view.ready();
    }

    /** Which record it is; how a program writes a server's address, and its options, are nothing a coach can use. */
    private static String record(Words words, String address) {
        return StoreAddress.of(address) instanceof StoreAddress.Server server
                ? words.text(
                        "unlock.server", server.host().orElse(words.text("unlock.this-machine")), server.database())
                : words.text("unlock.more", address);
    }

    private void unlock(char[] typed) {
        DeskSettings settings = door.settings();
        work(() -> opening.open(StoreAddress.of(settings.record()), typed), typed, settings);
    }

    @Override
    public void openDemo() {
        Path demo = records.resolve("demo-clinic" + StoreAddress.File.SUFFIX);
        work(
                () -> opening.demo(demo),
                Opening.DEMO_PASSPHRASE.toCharArray(),
                door.settings().at("", Opening.DEMO_COACH));
    }

    private Path newRecord() {
        return records.resolve("record" + StoreAddress.File.SUFFIX);
    }

    @Override
    public void create(String coach, char[] typed) {
        Path record = newRecord();
        work(
                () -> opening.create(new StoreAddress.File(record), typed),
                typed,
                door.settings().at(record.toString(), coach));
    }

    @Override
    public void createWith(String coach, char[] typed) {
        Words words = door.words();
        List<Path> files = dialogs.open(words.text("start.bring"), words.text("start.client-files"), "*.yaml");
        if (files.isEmpty()) {
            return;
        }
        Path record = newRecord();
        work(
                () -> {
                    Opening.Opened opened = opening.create(new StoreAddress.File(record), typed);
                    Opening.bringIn(opened.store(), files, coach);
                    return opened;
                },
                typed,
                door.settings().at(record.toString(), coach));
    }

    @Override
    public void join(String coach, String address, char[] password) {
        work(
                () -> opening.open(StoreAddress.of(address), password),
                password,
                door.settings().at(address, coach));
    }

    @Override
    public void settings(DeskSettings changed) {
        door.settings(changed);
    }

    private void work(Callable<Opening.Opened> work, char[] typed, DeskSettings then) {
        tell(door.words().text("opening"), "");
        background.run(work, opened -> door.enter(opened, typed, then), this::failed);
    }

    private void failed(Exception failure) {
        String[] told = Opening.told(failure);
        tell(told[0], told[1]);
    }

    private void tell(String what, String more) {
        if (door.page() instanceof StartView start) {
            start.tell(what, more);
        } else if (door.page() instanceof UnlockView unlock) {
            unlock.tell(what, more);
        }
    }

    /** Goes back to the first page, and says why. */
    void backAfter(Exception failure) {
        startPage();
        failed(failure);
    }
}
