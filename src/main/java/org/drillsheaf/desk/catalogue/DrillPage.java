package org.drillsheaf.desk.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.drill.BlockView;
import org.drillsheaf.desk.drill.Draft;
import org.drillsheaf.desk.drill.DrillForm;
import org.drillsheaf.desk.drill.DrillModel;
import org.drillsheaf.desk.drill.Finding;
import org.drillsheaf.desk.drill.TranslationsView;
import org.drillsheaf.desk.drill.VersionsView;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.pose.PoseModel;
import org.drillsheaf.desk.pose.PoseView;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.Phase;

/** One drill open: its name and version at the top, four tabs, its printed block beside them. */
public final class DrillPage extends BorderPane {
    /** From this width on the printed block fits beside the form, in em. */
    private static final double NARROW = 58;
    /** Size of the title, in em. */
    private static final double TITLE = 1.4;

    private static final double WIDER_THAN_ANY_WINDOW = 8_000;

    /** The sides of a drill. */
    public enum Tab {
        WORDS,
        POSE,
        TRANSLATIONS,
        VERSIONS,
        /** The printed block, where there is no room for it beside the form. */
        PRINTED
    }

    private final DrillModel model;
    private final DrillWords drillWords;
    private final Words words;
    private final Function<Phase, String> phaseName;
    private final Background background;
    private final Runnable kept;
    private final Consumer<Boolean> wide;
    private final Map<Tab, Node> contents = new EnumMap<>(Tab.class);
    private final Map<Tab, ToggleButton> tabs = new EnumMap<>(Tab.class);
    private final Label title = Labels.text("", "title");
    private final Label status = Labels.text("", "tag");
    private final Label version = Labels.text("", "second", "small");
    private final HBox head = new HBox();
    private final HBox below = new HBox();
    private final HBox tabRow = new HBox();
    private final Button back;
    private final Button undo;
    private final Button redo;
    private final Button keep;
    private final List<Node> actions;
    private final Readiness undoing;
    private final Readiness redoing;
    private final Readiness keeping;
    private final BlockView block;
    private int walked = -1;
    private Tab open = Tab.WORDS;

    /**
     * @param phaseName what the house calls a phase
     * @param kept is told when a version was kept
     * @param list goes back to the list
     * @param wide is told whether the page wants the whole width
     */
    public DrillPage(
            DrillModel model,
            DrillWords drillWords,
            Words words,
            Function<Phase, String> phaseName,
            Background background,
            Runnable kept,
            Consumer<Boolean> wide,
            Runnable list) {
        this.model = model;
        this.drillWords = drillWords;
        this.words = words;
        this.phaseName = phaseName;
        this.background = background;
        this.kept = kept;
        this.wide = wide;
        getStyleClass().add("drill-page");
        undo = Buttons.plain(words.text("drill.undo"), model.draft()::undo);
        redo = Buttons.plain(words.text("drill.redo"), model.draft()::redo);
        undoing = Readiness.of(undo);
        redoing = Readiness.of(redo);
        keep = Buttons.withKey(Buttons.main(words.text("drill.keep"), this::keep), "Ctrl S");
        keep.setId("keep");
        keeping = Readiness.of(keep);
        back = Buttons.withKey(Buttons.link(words.text("place.drills"), list), "Alt \u2190");
        actions = List.of(Labels.spring(), undo, redo, keep);
        head.getStyleClass().add("drill-head");
        head.setAlignment(Pos.CENTER_LEFT);
        below.setAlignment(Pos.CENTER_LEFT);
        title.setWrapText(true);
        title.getStyleClass().add("drill-title");
        status.setMinWidth(USE_PREF_SIZE);
        version.setWrapText(true);
        version.getStyleClass().add("drill-version");
        HBox.setHgrow(title, Priority.SOMETIMES);
        VBox top = new VBox(head, below);
        top.getStyleClass().add("drill-top");
        makeTabs();
        setTop(new VBox(top, tabRow));
        block = new BlockView(model, words);
        model.draft().document().addListener((of, before, now) -> showHead());
        model.status().addListener((of, before, now) -> showHead());
        model.findings().addListener((of, before, now) -> showHead());
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (pressed(e)) {
                e.consume();
            }
        });
        showHead();
        open(Tab.WORDS);
        widthProperty().addListener((of, before, now) -> arrange());
        title.fontProperty().addListener((of, before, now) -> arrange());
    }

    public DrillModel model() {
        return model;
    }

    private void makeTabs() {
        ToggleGroup group = new ToggleGroup();
        FlowPane row = new FlowPane();
        row.setPrefWrapLength(WIDER_THAN_ANY_WINDOW);
        HBox.setHgrow(row, Priority.ALWAYS);
        for (Tab tab : Tab.values()) {
            ToggleButton button =
                    new ToggleButton(words.text("tab." + tab.name().toLowerCase(Locale.ROOT)));
            button.setToggleGroup(group);
            button.getStyleClass().add("drill-tab");
            button.setOnAction(e -> open(tab));
            tabs.put(tab, button);
            button.setMinWidth(USE_PREF_SIZE);
            row.getChildren().add(button);
        }
        tabRow.getChildren().add(row);
        tabRow.getStyleClass().add("drill-tabs");
    }

    /** With little room the name has a line of its own, and the way back stands beside it. */
    private void arrangeHead(boolean narrow) {
        List<Node> first = new ArrayList<>(List.of(title));
        List<Node> second = new ArrayList<>(List.of(status, version));
        second.addAll(actions);
        if (narrow) {
            first.addAll(List.of(Labels.spring(), back));
        } else {
            first.addAll(second);
            second.clear();
        }
        if (!head.getChildren().equals(first)) {
            tabRow.getChildren().remove(back);
            head.getChildren().clear();
            below.getChildren().setAll(second);
            head.getChildren().setAll(first);
            if (!narrow) {
                tabRow.getChildren().add(back);
            }
            keep.setContentDisplay(narrow ? ContentDisplay.TEXT_ONLY : ContentDisplay.RIGHT);
        }
    }

    /** Shows one side of the drill. Each is made when it is first shown. */
    public void open(Tab tab) {
        Optional.ofNullable(tabs.get(tab)).ifPresent(t -> t.setSelected(true));
        Node content = contents.computeIfAbsent(tab, this::make);
        if (content instanceof VersionsView versions) {
            versions.show();
        }
        setCenter(content);
        wide.accept(tab == Tab.POSE);
        open = tab;
        arrange();
    }

    /** The printed block stands beside the form where there is room, else behind a tab of its own. */
    private void arrange() {
        boolean narrow = getWidth() > 0 && getWidth() < NARROW * title.getFont().getSize() / TITLE;
        ToggleButton printed = Optional.ofNullable(tabs.get(Tab.PRINTED)).orElseThrow();
        printed.setVisible(narrow);
        printed.setManaged(narrow);
        StyleClass.set(this, "little", narrow);
        arrangeHead(narrow);
        showHead();
        boolean beside = !narrow && (open == Tab.WORDS || open == Tab.TRANSLATIONS);
        setRight(beside ? block : null);
        if (open == Tab.PRINTED && narrow) {
            setCenter(block);
        } else if (open == Tab.PRINTED) {
            open(Tab.WORDS);
        }
    }

    private Node make(Tab tab) {
        return switch (tab) {
            case WORDS -> new DrillForm(model, drillWords, words, phaseName);
            case POSE -> scrolled(new PoseView(new PoseModel(model.draft(), words, background), words, background));
            case TRANSLATIONS -> new TranslationsView(model, words);
            case VERSIONS -> new VersionsView(model, words);
            case PRINTED -> new VBox();
        };
    }

    /** With large letters the pose needs more room than there is; then it moves, and the window stays whole. */
    private static ScrollPane scrolled(Node pose) {
        ScrollPane scroll = new ScrollPane(pose);
        scroll.setFitToHeight(true);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setMinWidth(0);
        return scroll;
    }

    private void showHead() {
        Draft draft = model.draft();
        title.setText(
                model.text("/name", words.language()).isEmpty()
                        ? model.text("/name", "en")
                        : model.text("/name", words.language()));
        String state = model.text("/status");
        status.setText(words.has("status." + state) ? words.text("status." + state) : state);
        status.getStyleClass()
                .setAll(
                        "label",
                        "tag",
                        switch (state) {
                            case "in-use" -> "inverted";
                            case "draft" -> "dashed";
                            case "withdrawn" -> "struck";
                            default -> "outlined";
                        });
        version.setText(words.text("drill.version", model.text("/revision"), model.text("/author")) + "  "
                + model.status().get());
        String undone =
                draft.undoable().get().map(w -> words.text("drill.undo-of", w)).orElse(words.text("drill.undo"));
        undo.setText(getStyleClass().contains("little") ? words.text("drill.undo") : undone);
        undo.setAccessibleText(undone);
        undoing.set(
                draft.undoable().get().isPresent() ? Optional.empty() : Optional.of(words.text("drill.nothing-undo")));
        redoing.set(
                draft.redoable().get().isPresent() ? Optional.empty() : Optional.of(words.text("drill.nothing-redo")));
        keeping.set(model.whyNotKept());
    }

    /** Tells something about this drill, and leads to keeping it. */
    public void remind(String what) {
        version.setText(what);
        Optional.ofNullable(lookup("#keep")).ifPresent(Node::requestFocus);
    }

    private void keep() {
        if (model.keep()) {
            kept.run();
        }
        showHead();
    }

    /** Undo, redo, keep, next finding; wherever the focus is. */
    boolean pressed(KeyEvent e) {
        if (e.isShortcutDown() && e.getCode() == KeyCode.Z) {
            if (e.isShiftDown()) {
                model.draft().redo();
            } else {
                model.draft().undo();
            }
        } else if (e.isShortcutDown() && e.getCode() == KeyCode.Y) {
            model.draft().redo();
        } else if (e.isShortcutDown() && e.getCode() == KeyCode.S) {
            keep();
        } else if (e.getCode() == KeyCode.F8) {
            walk(e.isShiftDown() ? -1 : 1);
        } else {
            return false;
        }
        return true;
    }

    /** Goes to the next finding, and to the tab where it can be mended. */
    private void walk(int by) {
        List<Finding> all = model.findings().get();
        if (all.isEmpty()) {
            return;
        }
        walked = Math.floorMod(walked + by, all.size());
        String field = all.get(walked).field();
        open(Tab.WORDS);
        if (contents.get(Tab.WORDS) instanceof DrillForm form && form.shows(field)) {
            form.go(field);
        } else if (field.equals("pose")) {
            open(Tab.POSE);
        } else {
            open(Tab.TRANSLATIONS);
        }
    }
}
