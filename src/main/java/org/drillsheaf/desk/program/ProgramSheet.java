package org.drillsheaf.desk.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.client.WhileOpen;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.ClashSet;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Program;
import org.jspecify.annotations.Nullable;

/** The sheet with the program: phases as columns, each drill with its reason, and what every change costs. */
public final class ProgramSheet implements Sheet, EntryView.Hands {
    /** The most that messages take of the height; the rest is for the columns. */
    private static final double SHARE_OF_MESSAGES = 0.6;

    private static final double SHARE_WITH_LITTLE_ROOM = 0.9;

    private final ProgramModel model;
    private final Words words;
    private final IntConsumer open;
    private final BorderPane pane = new BorderPane();
    private final VBox top = new VBox();
    private final ScrollPane messages = new ScrollPane();
    private final Button sign;
    private final Readiness signing;
    private final List<PhaseColumn> columns = new ArrayList<>();
    private @Nullable ClashView clash;
    private @Nullable Program drawn;
    private final WhileOpen whileOpen;
    private Optional<EntryView> selected = Optional.empty();
    private boolean waitsForEntries;
    private boolean little;

    public ProgramSheet(ClientCase client, IntConsumer open) {
        this.model = new ProgramModel(client);
        this.words = client.workplace().words();
        this.open = open;
        this.sign = Buttons.main(words.text("program.sign"), client::sign);
        this.signing = Readiness.of(sign);
        pane.getStyleClass().add("sheet");
        messages.setContent(top);
        messages.setFitToWidth(true);
        messages.setFocusTraversable(false);
        messages.setMinHeight(0);
        pane.heightProperty().addListener((of, old, now) -> share());
        pane.setTop(messages);
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
        top.getChildren().clear();
        Optional<ClashSet> clashing = model.client().isBuiltForNow() ? model.clash() : Optional.empty();
        clash = null;
        clashing.ifPresent(c -> {
            ClashView view = new ClashView(model, words, c, little);
            clash = view;
            top.getChildren().add(view);
            model.shown().ifPresent(s -> top.getChildren().add(kept(s)));
        });
        if (model.client().isBuiltForNow()) {
            model.refusal().forEach(r -> top.getChildren()
                    .add(model.isStoppedWithout() ? message(r, searchAgain()) : message(r)));
        }
        if (!model.mayBuild()) {
            top.getChildren().add(message(words.text("program.safety-first")));
        }
        if (model.client().searchIsLong().get()) {
            top.getChildren().add(searching());
        }
        model.notProved().ifPresent(gap -> top.getChildren().add(notProved(gap)));
        Program program = model.shown().map(ProgramModel.Shown::program).orElse(null);
        if (program != null && program != drawn) {
            draw(model.shown().get());
        } else if (program == null) {
            drawn = null;
            pane.setCenter(Labels.prose(words.text("program.none"), "second", "column-left"));
        }
        pane.getCenter().setOpacity(model.isCurrent() || !clashing.isEmpty() ? 1 : 0.75);
    }

    private Node searching() {
        ProgressBar bar = new ProgressBar();
        bar.setAccessibleText(words.text("work.bar"));
        Button stop =
                Buttons.small(words.text("work.stop"), () -> model.client().stopSearch());
        HBox line = new HBox(12, Labels.text(words.text("program.searching"), "bold"), bar, stop);
        line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        line.getStyleClass().add("kept");
        return line;
    }

    private Node notProved(String gap) {
        VBox box = new VBox(new Message(
                "caution", words.text("program.stopped"), words.text("program.stopped-more", gap), searchAgain()));
        box.setPadding(new javafx.geometry.Insets(8, 16, 8, 16));
        return box;
    }

    private Button searchAgain() {
        return Buttons.small(
                words.text("program.search-on"), () -> model.client().searchAgain());
    }

    private static VBox message(String text, Button... actions) {
        VBox box = new VBox(new Message("caution", text, "", actions));
        box.setPadding(new javafx.geometry.Insets(8, 16, 8, 16));
        return box;
    }

    private Node kept(ProgramModel.Shown shown) {
        HBox line = new HBox(
                8,
                Labels.text(words.text("program.kept", words.time(shown.at())), "bold"),
                Labels.text(words.text("program.kept-more"), "second"));
        line.getStyleClass().add("kept");
        return line;
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

    private void draw(ProgramModel.Shown shown) {
        Optional<String> before = selected.map(s -> s.phase().id() + s.entry().drill());
        boolean hadFocus = selected.filter(EntryView::isFocused).isPresent() || clashHadFocus();
        drawn = shown.program();
        columns.clear();
        selected = Optional.empty();
        pane.setRight(null);
        HBox row = new HBox();
        int target = shown.built().planning().needs().client().minutesPerSession();
        for (PhasePlan plan : shown.program().phases()) {
            PhaseColumn column = new PhaseColumn(model, words, plan, target, little, this);
            HBox.setHgrow(column, Priority.ALWAYS);
            columns.add(column);
            row.getChildren().add(column);
        }
        ScrollPane scroll = new ScrollPane(row);
        scroll.setFitToHeight(true);
        scroll.setFitToWidth(true);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setCenter(scroll);
        for (EntryView entry : entries()) {
            entry.focusedProperty().addListener((of, old, now) -> {
                if (now) {
                    select(entry);
                }
            });
            entry.setOnKeyPressed(key -> {
                if (pressed(key, entry)) {
                    key.consume();
                }
            });
        }
        entries().stream()
                .filter(e ->
                        before.equals(Optional.of(e.phase().id() + e.entry().drill())))
                .findFirst()
                .or(() -> before.isPresent() || waitsForEntries
                        ? entries().stream().findFirst()
                        : Optional.empty())
                .ifPresent(e -> {
                    select(e);
                    if (hadFocus || waitsForEntries) {
                        waitsForEntries = false;
                        inPlace();
                        e.requestFocus();
                    }
                });
    }

    private boolean clashHadFocus() {
        Node owner = pane.getScene() == null ? null : pane.getScene().getFocusOwner();
        for (Node n = owner; n != null; n = n.getParent()) {
            if (n == pane) {
                return true;
            }
        }
        return false;
    }

    private void inPlace() {
        pane.applyCss();
        pane.layout();
    }

    private List<EntryView> entries() {
        return columns.stream().flatMap(c -> c.entries().stream()).toList();
    }

    private void select(EntryView entry) {
        selected.ifPresent(s -> s.selected(false));
        selected = Optional.of(entry);
        entry.selected(true);
    }

    @Override
    public void take(EntryView entry) {
        entry.requestFocus();
        select(entry);
        panel(entry, false);
    }

    private void panel(EntryView entry, boolean focus) {
        EntryPanel panel = new EntryPanel(model, words, entry.phase(), entry.entry(), () -> {
            pane.setRight(null);
            entry.requestFocus();
        });
        pane.setRight(panel);
        if (focus) {
            panel.ready();
        }
    }

    @Override
    public void drop(Phase phase, String drill, EntryView before) {
        List<EntryView> inPhase = columns.get(phase.ordinal()).entries();
        model.move(phase, drill, inPhase.indexOf(before), words.text("undo.order", model.name(drill)));
    }

    private boolean pressed(KeyEvent key, EntryView entry) {
        String name = model.name(entry.entry().drill());
        if (key.isAltDown() && (key.getCode() == KeyCode.UP || key.getCode() == KeyCode.DOWN)) {
            List<EntryView> inPhase = columns.get(entry.phase().ordinal()).entries();
            int to = inPhase.indexOf(entry) + (key.getCode() == KeyCode.UP ? -1 : 1);
            model.move(entry.phase(), entry.entry().drill(), to, words.text("undo.order", name));
            return true;
        }
        if (key.isShortcutDown() || key.isAltDown()) {
            return false;
        }
        switch (key.getCode()) {
            case S, ENTER -> panel(entry, true);
            case K -> model.pin(entry.phase(), entry.entry(), words.text("undo.pin", name));
            case DELETE -> model.leaveOut(entry.phase(), entry.entry(), words.text("undo.left-out", name));
            case PLUS, ADD, EQUALS -> model.dose(entry.phase(), entry.entry(), 1, 0, 0, words.text("undo.dose", name));
            case MINUS, SUBTRACT -> model.dose(entry.phase(), entry.entry(), -1, 0, 0, words.text("undo.dose", name));
            case UP -> step(entry, -1);
            case DOWN -> step(entry, 1);
            case LEFT -> sideways(entry, -1);
            case RIGHT -> sideways(entry, 1);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void step(EntryView from, int by) {
        List<EntryView> inPhase = columns.get(from.phase().ordinal()).entries();
        int to = inPhase.indexOf(from) + by;
        if (to >= 0 && to < inPhase.size()) {
            inPhase.get(to).requestFocus();
        }
    }

    private void sideways(EntryView from, int by) {
        int row = columns.get(from.phase().ordinal()).entries().indexOf(from);
        for (int c = from.phase().ordinal() + by; c >= 0 && c < columns.size(); c += by) {
            List<EntryView> there = columns.get(c).entries();
            if (!there.isEmpty()) {
                there.get(Math.min(row, there.size() - 1)).requestFocus();
                return;
            }
        }
    }

    @Override
    public String name() {
        return words.text("sheet.program");
    }

    @Override
    public String summary() {
        if (!model.mayBuild()) {
            return words.text("program.summary-waits");
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
        drawn = null;
        whileOpen.changed();
    }

    @Override
    public List<Node> actions() {
        Button build = Buttons.withKey(
                Buttons.plain(words.text("program.build"), () -> model.client().buildNow()), "Ctrl B");
        return List.of(build, sign);
    }

    @Override
    public List<Page.Hint> hints() {
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
        inPlace();
        if (clash != null) {
            clash.ready();
        } else {
            Optional<EntryView> first = selected.or(() -> entries().stream().findFirst());
            waitsForEntries = first.isEmpty();
            first.ifPresentOrElse(Node::requestFocus, sign::requestFocus);
        }
    }

    @Override
    public boolean pressed(KeyEvent key) {
        if (clash != null && key.getText().matches("[1-9]") && !key.isShortcutDown() && !key.isAltDown()) {
            return clash.letGo(Integer.parseInt(key.getText()));
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
