package org.drillsheaf.desk.program;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.client.WhileOpen;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.program.Program;

/** The sheet with the program: phases as columns, each drill with its reason, and what every change costs. */
public final class ProgramSheet implements Sheet {
    /** The most that messages take of the height; the rest is for the columns. */
    private static final double SHARE_OF_MESSAGES = 0.6;

    private static final double SHARE_WITH_LITTLE_ROOM = 0.9;

    private final ProgramModel model;
    private final Words words;
    private final IntConsumer open;
    private final BorderPane pane = new BorderPane();
    private final ProgramMessages top;
    private final ScrollPane messages = new ScrollPane();
    private final Button build;
    private final Readiness building;
    private final Button sign;
    private final Readiness signing;
    private final PhaseBoard board;
    private Optional<ClashView> clash = Optional.empty();
    private final WhileOpen whileOpen;
    private boolean little;

    public ProgramSheet(ClientCase client, IntConsumer open) {
        this.model = new ProgramModel(client);
        this.words = client.workplace().words();
        this.open = open;
        this.sign = Buttons.main(words.text("program.sign"), client::sign);
        this.signing = Readiness.of(sign);
        this.build = Buttons.withKey(Buttons.plain("", client::buildNow), "Ctrl B");
        this.building = Readiness.of(build);
        this.top = new ProgramMessages(model, words);
        this.board = new PhaseBoard(model, words, pane);
        pane.getStyleClass().add("sheet");
        messages.setContent(top);
        messages.setFitToWidth(true);
        messages.setFocusTraversable(false);
        messages.setMinHeight(0);
        pane.heightProperty().addListener((of, old, now) -> share());
        pane.setTop(messages);
        pane.setCenter(board);
        pane.setMinHeight(0); // messages that find no room are scrolled; they never push the edges of the sheets away
        client.evaluation().addListener((of, old, now) -> changed());
        client.built().addListener((of, old, now) -> changed());
        client.kept().addListener((of, old, now) -> changed());
        client.searchIsLong().addListener((of, old, now) -> changed());
        whileOpen = new WhileOpen(pane, this::show);
    }

    private void changed() {
        whileOpen.changed();
    }

    private void share() {
        messages.setMaxHeight(pane.getHeight() * (little ? SHARE_WITH_LITTLE_ROOM : SHARE_OF_MESSAGES));
    }

    private void show() {
        signing.set(notReady());
        building.set(model.mayBuild() ? Optional.empty() : Optional.of(model.whyNotBuilt("program.not-ready-safety")));
        build.setText(words.text(model.shown().isPresent() ? "program.build" : "reading.build"));
        build.setAccessibleText(build.getText() + ", Ctrl B");
        clash = top.show(little);
        model.shown()
                .ifPresentOrElse(
                        board::show,
                        () -> board.empty(Labels.prose(words.text("program.none"), "second", "column-left")));
    }

    private Optional<String> notReady() {
        if (!model.mayBuild()) {
            return Optional.of(words.text("program.not-ready-safety"));
        }
        if (!model.isCurrent()) {
            return Optional.of(words.text("program.not-ready-building"));
        }
        return model.client()
                .signed()
                .map(k -> words.text("program.signed-already", k.signedBy().orElse("")));
    }

    @Override
    public String name() {
        return words.text("sheet.program");
    }

    @Override
    public String summary() {
        if (!model.mayBuild()) {
            return model.whyNotBuilt("program.summary-waits");
        }
        if (model.client().isBuiltForNow() && model.clash().isPresent()) {
            return words.text("program.summary-clash");
        }
        if (!model.isCurrent()) {
            return words.text(model.client().isBuiltForNow() ? "program.summary-refused" : "program.summary-building");
        }
        Program program = model.shown().orElseThrow().program();
        int drills = program.phases().stream().mapToInt(p -> p.entries().size()).sum();
        String proof = program.proof().best()
                ? words.text("program.proved")
                : words.text("program.found", model.trade().say(program.proof().gap()));
        String signed = model.client()
                .signed()
                .map(k -> " " + words.text("program.signed-by", k.signedBy().orElse("")))
                .orElse("");
        String cost = model.costOfLastChange()
                .map(c -> " " + words.text("program.last-change", c))
                .orElse("");
        return words.text("program.summary", drills, proof) + cost + signed;
    }

    @Override
    public Parent content() {
        return pane;
    }

    @Override
    public void compact(boolean now) {
        little = now;
        share();
        board.compact(now);
        whileOpen.changed();
    }

    @Override
    public List<Node> actions() {
        return List.of(build, sign);
    }

    @Override
    public List<Page.Hint> hints() {
        if (clash.isPresent()) {
            return List.of(
                    new Page.Hint("1 – " + clash.get().size(), words.text("hint.let-go")),
                    new Page.Hint("Ctrl Z", words.text("menu.undo")));
        }
        if (model.shown().isEmpty()) {
            return List.of(new Page.Hint("F8", words.text("hint.next-missing")));
        }
        return List.of(
                new Page.Hint(words.text("key.arrows"), words.text("hint.between-drills")),
                new Page.Hint("S", words.text("hint.swap")),
                new Page.Hint("K", words.text("hint.pin")),
                new Page.Hint("Del", words.text("hint.leave-out")),
                new Page.Hint("+ −", words.text("hint.dose")),
                new Page.Hint("Alt ↑ ↓", words.text("hint.order")),
                new Page.Hint("Ctrl Enter", words.text("hint.sign")));
    }

    @Override
    public void shown() {
        model.client().buildNow();
        pane.applyCss();
        pane.layout();
        if (clash.isPresent()) {
            clash.get().ready();
        } else if (!board.ready()) {
            sign.requestFocus();
        }
    }

    @Override
    public boolean pressed(KeyEvent key) {
        if (clash.isPresent() && key.getText().matches("[1-9]") && !key.isShortcutDown() && !key.isAltDown()) {
            return clash.get().letGo(Integer.parseInt(key.getText()));
        }
        if (key.isShortcutDown() && key.getCode() == KeyCode.B) {
            model.client().buildNow();
            return true;
        }
        if (key.isShortcutDown()
                && key.getCode() == KeyCode.ENTER
                && signing.reason().isEmpty()) {
            sign.fire();
            open.accept(3);
            return true;
        }
        return false;
    }
}
