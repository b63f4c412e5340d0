package org.drillsheaf.desk.house;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.Problem;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.frame.FrameView;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.words.Words;

/** The clinic's own tests, phases and templates: which there are, what differs from ours, and what is wrong with them. */
final class OwnFilesView extends VBox {
    private static final int MOST_LINES = 6;
    private static final int MOST_PROBLEMS = 5;

    private final Workplace workplace;
    private final Words words;
    private final FrameView.Actions actions;
    private final OwnFiles files;
    private final VBox list = new VBox(8);
    private final VBox told = new VBox(6);
    private final ComboBox<String> more = new ComboBox<>();
    private List<OwnFiles.Own> all = List.of();

    OwnFilesView(Workplace workplace, FrameView.Actions actions) {
        this.workplace = workplace;
        this.words = workplace.words();
        this.actions = actions;
        this.files = new OwnFiles(workplace.folders());
        getStyleClass().add("house-part");
        more.setPromptText(words.text("own.choose"));
        more.setAccessibleText(words.text("own.choose"));
        more.setConverter(new Named<>(name -> name));
        Button begin = Buttons.plain(words.text("own.begin"), this::begin);
        Button check = Buttons.plain(words.text("own.check"), this::check);
        Button folder = Buttons.plain(words.text("own.folder"), () -> open(files.folder()));
        HBox start = new HBox(12, more, begin);
        HBox row = new HBox(12, check, folder);
        start.setAlignment(Pos.CENTER_LEFT);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren()
                .addAll(
                        Labels.text(words.text("own.title"), "heading"),
                        Labels.prose(words.text("own.more"), "second"),
                        list,
                        start,
                        row,
                        told);
        look();
    }

    private void look() {
        workplace.background().run(files::list, this::show, this::failed);
    }

    private void show(List<OwnFiles.Own> found) {
        all = found;
        list.getChildren().clear();
        found.stream().filter(OwnFiles.Own::isOwn).forEach(own -> list.getChildren()
                .add(row(own)));
        if (list.getChildren().isEmpty()) {
            list.getChildren().add(Labels.prose(words.text("own.none"), "second"));
        }
        more.getItems()
                .setAll(found.stream()
                        .filter(o -> !o.isOwn())
                        .map(OwnFiles.Own::name)
                        .toList());
    }

    private VBox row(OwnFiles.Own own) {
        Button open = Buttons.small(words.text("own.open"), () -> open(own.place()));
        open.setAccessibleText(words.text("own.open") + ": " + own.name());
        Button ours = Buttons.small(words.text("own.take-ours"), () -> takeOurs(own));
        ours.setAccessibleText(words.text("own.take-ours") + ": " + own.name());
        HBox head = new HBox(
                10,
                Labels.text(own.name(), "bold"),
                Labels.text(words.count("own.lines", own.changed().size()), "second"),
                open,
                ours);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox row = new VBox(2, head);
        own.changed().stream().limit(MOST_LINES).forEach(line -> row.getChildren()
                .add(line(line)));
        if (own.changed().size() > MOST_LINES) {
            row.getChildren()
                    .add(Labels.text(
                            words.text("own.more-lines", own.changed().size() - MOST_LINES), "small", "third"));
        }
        return row;
    }

    private static Label line(String text) {
        Label line = Labels.text(text, "small", "second");
        line.setNodeOrientation(javafx.geometry.NodeOrientation.LEFT_TO_RIGHT);
        return line;
    }

    private void open(java.nio.file.Path path) {
        if (!workplace.dialogs().show(path)) {
            tell(words.text("own.no-program", path.toString()));
        }
    }

    private void begin() {
        all.stream()
                .filter(own -> own.name().equals(more.getValue()))
                .findFirst()
                .ifPresent(own -> change(() -> {
                    files.begin(own);
                    return words.text("own.begun", own.place().toString());
                }));
    }

    private void takeOurs(OwnFiles.Own own) {
        change(() -> words.text("own.aside", files.takeOurs(own).toString()));
    }

    private void change(java.util.concurrent.Callable<String> work) {
        workplace
                .background()
                .run(
                        work,
                        said -> {
                            tell(said);
                            look();
                        },
                        this::failed);
    }

    private void check() {
        tell(words.text("own.checking"));
        workplace
                .background()
                .run(
                        () -> files.check(HouseStyleSetting.style(workplace.store(), workplace.folders())),
                        this::checked,
                        this::failed);
    }

    private void checked(List<Problem> problems) {
        look();
        if (problems.isEmpty()) {
            tell(words.text("own.fine"));
            actions.readAgain();
            return;
        }
        told.getChildren().clear();
        problems.stream().limit(MOST_PROBLEMS).forEach(problem -> told.getChildren()
                .add(new Message("caution", problem.message(), "")));
    }

    private void tell(String text) {
        told.getChildren().setAll(Labels.prose(text, "bold"));
    }

    private void failed(Exception failure) {
        tell(Optional.ofNullable(failure.getMessage()).orElse(failure.toString()));
    }
}
