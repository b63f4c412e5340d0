package org.drillsheaf.desk.catalogue;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.Dialogs;
import org.drillsheaf.desk.drill.DrillFolder;
import org.drillsheaf.desk.drill.DrillModel;
import org.drillsheaf.desk.drill.RevisionShelf;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.incoming.ImportModel;
import org.drillsheaf.desk.incoming.ImportView;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.jspecify.annotations.Nullable;

/** The place of the drills: the list at one side, the chosen drill beside it. */
public final class DrillsPlace extends BorderPane {
    /** From this width on list, form and printed block fit beside each other, in em. */
    private static final double NARROW = 72;

    private final Folders folders;
    private final Optional<RevisionShelf> revisions;
    private final Words words;
    private final Function<Phase, String> phaseName;
    private final Clock clock;
    private final Background background;
    private final Dialogs dialogs;
    private final Runnable changed;
    private final Runnable keysChanged;
    private final DrillFolder folder;
    private final DrillPictures pictures;
    private @Nullable DrillShelf shelf;
    private @Nullable CatalogueModel catalogue;
    private @Nullable CatalogueList list;
    private @Nullable DrillPage page;
    private @Nullable ImportView incoming;
    private @Nullable VBox side;
    private boolean poseOpen;
    private boolean listWanted = true;

    /**
     * @param revisions keeps every version in the record; empty while no record is open
     * @param phaseName what the house calls a phase
     * @param changed is told when a drill of the house was written
     * @param keysChanged is told when other keys count
     */
    public DrillsPlace(
            Folders folders,
            Optional<RevisionShelf> revisions,
            Words words,
            Function<Phase, String> phaseName,
            Clock clock,
            Background background,
            Dialogs dialogs,
            Runnable changed,
            Runnable keysChanged) {
        this.folders = folders;
        this.revisions = revisions;
        this.words = words;
        this.phaseName = phaseName;
        this.clock = clock;
        this.background = background;
        this.dialogs = dialogs;
        this.changed = changed;
        this.keysChanged = keysChanged;
        this.folder = new DrillFolder(folders);
        this.pictures = new DrillPictures(
                work -> background.run(
                        () -> {
                            work.run();
                            return true;
                        },
                        done -> {},
                        e -> {}),
                background::show);
        getStyleClass().add("drills-place");
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (pressed(e)) {
                e.consume();
            }
        });
        widthProperty().addListener((of, before, now) -> arrange());
        background.later(Duration.ofMillis(400), () -> {
            if (shelf == null) {
                message(words.text("drills.reading"));
            }
        });
        read(Optional.empty());
    }

    /** The keys that lead to the list, from wherever the focus is. */
    boolean pressed(KeyEvent key) {
        boolean back = key.isAltDown() && key.getCode() == KeyCode.LEFT;
        if (list != null && (back || key.isShortcutDown() && key.getCode() == KeyCode.F)) {
            showList();
            return true;
        }
        return false;
    }

    private void message(String text) {
        VBox box = new VBox(Labels.prose(text, "second"));
        box.setAlignment(Pos.CENTER);
        setCenter(box);
    }

    /** The keys that do something now: not all of them while no drill is open. */
    List<Page.Hint> hints() {
        List<Page.Hint> keys = new ArrayList<>();
        Optional.ofNullable(incoming).map(ImportView::hints).ifPresent(keys::addAll);
        if (list != null) {
            keys.add(new Page.Hint("Ctrl F", words.text("drills.hint.search")));
        }
        if (page != null) {
            keys.add(new Page.Hint("F8", words.text("drills.hint.finding")));
            keys.add(new Page.Hint("Ctrl S", words.text("drills.hint.keep")));
        }
        return keys;
    }

    /** The page of the open drill, if one is open. */
    public Optional<DrillPage> page() {
        return Optional.ofNullable(page);
    }

    public Optional<CatalogueList> list() {
        return Optional.ofNullable(list);
    }

    /** Reads the catalogue anew. */
    private void read(Optional<String> chosen) {
        Problems problems = new Problems();
        background.run(
                () -> DrillShelf.read(folders, clock, problems).map(s -> new Read(s, s.entries())),
                read -> {
                    if (read.isPresent()) {
                        show(read.get(), chosen);
                    } else {
                        Problem first = problems.all().get(0);
                        message(first.message());
                    }
                },
                e -> message(words.text("drills.unreadable", String.valueOf(e.getMessage()))));
    }

    private record Read(DrillShelf shelf, List<DrillEntry> entries) {}

    private void show(Read read, Optional<String> chosen) {
        shelf = read.shelf;
        CatalogueModel model = catalogue;
        if (model == null) {
            model = new CatalogueModel(
                    words,
                    read.shelf.library().catalogue().words(),
                    read.shelf.conditions(words.language()),
                    read.entries);
            catalogue = model;
            list = new CatalogueList(model, pictures, words, phaseName, this::open);
            list.font().addListener((of, before, now) -> arrange());
            VBox beside = new VBox(list, actions());
            side = beside;
            setLeft(beside);
            VBox.setVgrow(list, javafx.scene.layout.Priority.ALWAYS);
            beside.getStyleClass().add("drills-side");
            message(words.text("drills.choose"));
            keysChanged.run();
            if (getScene() != null) {
                list.focusSearch(); // whoever came here while the drills were read goes on by typing
            }
        } else {
            model.show(read.shelf.library().catalogue().words(), read.entries);
        }
        checkHouse(model, read);
        chosen.ifPresent(id -> Optional.ofNullable(list).ifPresent(l -> l.choose(id)));
    }

    /** What the check finds in the clinic's own drills stands in the list; the starter catalogue comes checked. */
    private void checkHouse(CatalogueModel model, Read read) {
        for (DrillEntry entry : read.entries) {
            if (entry.standing() == Standing.REPLACED || entry.standing() == Standing.ADDED) {
                folder.open(entry.id(), read.shelf.library().layers(), new Problems())
                        .ifPresent(opened -> background.run(
                                () -> read.shelf
                                        .check()
                                        .look(opened.document())
                                        .findings()
                                        .size(),
                                count -> {
                                    model.found(entry.id(), count);
                                    Optional.ofNullable(list)
                                            .ifPresent(l -> l.list().refresh());
                                },
                                e -> {}));
            }
        }
    }

    private HBox actions() {
        Button copy = Buttons.plain(words.text("drills.copy"), this::copy);
        Button in = Buttons.plain(words.text("drills.bring-in"), this::bringIn);
        HBox actions = new HBox(8, copy, in);
        actions.getStyleClass().add("drills-actions");
        return actions;
    }

    /** Opens a drill of the list; an unkept draft of another one stays open until it is kept or taken back. */
    private void open(DrillEntry entry) {
        DrillPage now = page;
        if (now != null && now.model().id().equals(entry.id())) {
            return;
        }
        if (now != null && now.model().draft().changed().get()) {
            Platform.runLater(() -> {
                Optional.ofNullable(list).ifPresent(l -> l.choose(now.model().id()));
                now.remind(words.text("drill.keep-first"));
            });
            return;
        }
        Problems problems = new Problems();
        DrillShelf read = shelf;
        if (read != null) {
            folder.open(entry.id(), read.library().layers(), problems)
                    .ifPresentOrElse(
                            opened -> open(opened, read),
                            () -> message(problems.all().get(0).message()));
        }
    }

    private void open(DrillFolder.Opened opened, DrillShelf read) {
        DrillModel model =
                new DrillModel(opened, folder, read.check(), read.printer(), revisions, words, clock, background);
        DrillPage opening = new DrillPage(
                model,
                read.library().catalogue().words(),
                words,
                phaseName,
                background,
                () -> {
                    read(Optional.of(opened.id()));
                    changed.run();
                },
                this::widen,
                this::showList);
        page = opening;
        incoming = null;
        keysChanged.run();
        setCenter(opening);
        listWanted = false;
        arrange();
    }

    /** The pose takes the room of the list too. */
    private void widen(boolean wanted) {
        poseOpen = wanted;
        listWanted = false;
        arrange();
    }

    /** Where list and drill do not fit beside each other, the open drill has the room until the list is asked for. */
    private void arrange() {
        VBox beside = side;
        CatalogueList shown = list;
        if (beside != null && shown != null) {
            boolean narrow = getWidth() < NARROW * shown.font().get().getSize();
            boolean alone = page == null && incoming == null;
            boolean seen = listWanted || alone || !poseOpen && !narrow;
            beside.setVisible(seen);
            beside.setManaged(seen);
        }
    }

    private void showList() {
        listWanted = true;
        arrange();
        Optional.ofNullable(list).ifPresent(CatalogueList::focusSearch);
    }

    /** Shows what a file of drills would change. */
    private void bringIn() {
        DrillPage now = page;
        if (now != null && now.model().draft().changed().get()) {
            now.remind(words.text("drill.keep-first"));
            return;
        }
        dialogs.open(words.text("drills.bring-in"), words.text("drills.files"), "*.zip", "*.xlsx", "*.csv").stream()
                .findFirst()
                .ifPresent(file -> {
                    ImportView view = new ImportView(
                            new ImportModel(folders, revisions, clock),
                            words,
                            background,
                            () -> {
                                read(Optional.empty());
                                changed.run();
                            },
                            this::closeImport,
                            keysChanged);
                    page = null;
                    incoming = view;
                    keysChanged.run();
                    listWanted = false;
                    setCenter(view);
                    arrange();
                    view.look(file);
                });
    }

    private void closeImport() {
        incoming = null;
        keysChanged.run();
        message(words.text("drills.choose"));
        showList();
    }

    /** A drill of the clinic's own that begins like the open one. */
    private void copy() {
        DrillPage now = page;
        DrillShelf read = shelf;
        if (now == null || read == null || now.model().draft().changed().get()) {
            Optional.ofNullable(now).ifPresent(p -> p.remind(words.text("drill.keep-first")));
            return;
        }
        String id = freeId(now.model().id(), read);
        open(
                folder.copy(
                        now.model().draft().now(),
                        id,
                        words.text("drills.copy-name", now.model().text("/name", "en"))),
                read);
    }

    private static String freeId(String id, DrillShelf read) {
        for (int i = 2; ; i++) {
            String free = id + "-" + i;
            if (read.library().catalogue().drill(free).isEmpty()) {
                return free;
            }
        }
    }
}
