package org.drillsheaf.desk.pose;

import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.Problem;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.RootPosture;

/** The pose of a drill: what it touches and shows on one side, the figure from four sides, its joints on the other side. */
public final class PoseView extends BorderPane {
    private static final String ALL = "all";
    private static final String FIRST = "side";
    private static final Map<String, View> VIEWS = views();

    /** With less than this, in em, four views would show little more than their joints: then there is one, and it is large. */
    private static final double HEIGHT_FOR_FOUR = 32;

    private static final double WIDTH_FOR_FOUR = 24;

    /** Size of small letters, in em. */
    private static final double SMALL = 0.92;

    private final PoseModel model;
    private final Words words;
    private final Map<String, FigurePane> panes = new LinkedHashMap<>();
    private final FigureGrid figures;
    private final HBox keyframes = new HBox();
    private final VBox messages = new VBox();
    private final HBox viewChoice = new HBox();
    private final Segments<String> fourOrOne;
    private final Segments<String> oneOnly;
    private final Label help;
    private String wanted = ALL;
    private boolean roomForFour = true;

    public PoseView(PoseModel model, Words words, Background background) {
        this.model = model;
        this.words = words;
        getStyleClass().add("pose-view");
        FigureDrawer drawer = new FigureDrawer();
        VIEWS.forEach((name, view) ->
                panes.put(name, new FigurePane(model, view, words.text("view." + name), drawer, background)));
        figures = new FigureGrid(List.copyOf(panes.values()));
        fourOrOne = choice(true);
        oneOnly = choice(false);
        help = Labels.prose(words.text("pose.help"), "second", "small", "pose-help");
        setLeft(scroll(parts(), "pose-side"));
        setCenter(middle());
        setRight(scroll(joints(), "pose-joints"));
        model.frame().addListener((of, before, now) -> showKeyframes());
        model.rows().addListener((of, before, now) -> showKeyframes());
        model.messages().addListener((of, before, now) -> showMessages());
        model.refusal().addListener((of, before, now) -> showMessages());
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        showViews();
        showKeyframes();
        showMessages();
        heightProperty().addListener((of, before, now) -> fit());
        figures.widthProperty().addListener((of, before, now) -> fit());
        help.fontProperty().addListener((of, before, now) -> fit());
    }

    private void fit() {
        double em = help.getFont().getSize() / SMALL;
        boolean room = getHeight() >= HEIGHT_FOR_FOUR * em && figures.getWidth() >= WIDTH_FOR_FOUR * em;
        if (room != roomForFour && getHeight() > 0) {
            roomForFour = room;
            help.setVisible(room);
            help.setManaged(room);
            showViews();
        }
    }

    private static Map<String, View> views() {
        Map<String, View> views = new LinkedHashMap<>();
        views.put(FIRST, View.SIDE);
        views.put("three-quarter", new View(40, 16));
        views.put("front", View.FRONT);
        views.put("above", View.TOP);
        return views;
    }

    private static ScrollPane scroll(Node content, String style) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setFocusTraversable(false);
        pane.getStyleClass().add(style);
        return pane;
    }

    private VBox parts() {
        ComboBox<RootPosture> root = new ComboBox<>();
        root.getItems().setAll(RootPosture.values());
        root.setConverter(new Named<>(posture -> words.text("posture." + posture.id())));
        root.setMaxWidth(Double.MAX_VALUE);
        Label title = Labels.text(words.text("pose.root"), "bold");
        title.setLabelFor(root);
        Runnable show = () -> RootPosture.of(
                        PoseText.keyframe(model.draft().now(), model.frame().get())
                                .path("root")
                                .asText("standing"))
                .ifPresent(root::setValue);
        show.run();
        model.rows().addListener((of, before, now) -> show.run());
        root.setOnAction(e -> Optional.ofNullable(root.getValue()).ifPresent(posture -> model.draft()
                .change(
                        words.text("undo.posture"),
                        "posture",
                        PoseText.keyframe(model.draft().now(), model.frame().get())
                                        .path("root")
                                        .asText("standing")
                                        .equals(posture.id())
                                ? model.draft().now()
                                : PoseText.with(
                                        model.draft().now(),
                                        model.frame().get(),
                                        "root",
                                        TextNode.valueOf(posture.id())))));
        VBox parts = new VBox(
                title,
                root,
                new PartList(model, words, "contacts"),
                new PartList(model, words, "props"),
                new PartList(model, words, "marks"),
                Labels.prose(words.text("pose.parts.help"), "third", "small"));
        parts.getStyleClass().add("pose-parts");
        return parts;
    }

    private VBox middle() {
        figures.getStyleClass().add("figures");
        VBox.setVgrow(figures, Priority.ALWAYS);
        Button mirror = Buttons.small(words.text("pose.mirror"), model::mirror);
        HBox head = new HBox(viewChoice, Labels.spring(), mirror);
        head.getStyleClass().add("pose-head");
        head.setAlignment(Pos.CENTER_LEFT);
        keyframes.getStyleClass().add("keyframes");
        keyframes.setAlignment(Pos.CENTER_LEFT);
        VBox middle = new VBox(head, figures, help, keyframes);
        middle.getStyleClass().add("pose-middle");
        return middle;
    }

    private VBox joints() {
        Label title = Labels.text(words.text("pose.joints"), "bold");
        Label pairs = Labels.text(words.text("pose.pairs"), "second", "small");
        Button write = Buttons.link(words.text("pose.take-all"), model::takeAllSolved);
        HBox head = new HBox(8, title, pairs);
        head.setAlignment(Pos.BASELINE_LEFT);
        messages.getStyleClass().add("pose-messages");
        VBox joints = new VBox(head, new JointRows(model, words), write, messages);
        joints.getStyleClass().add("pose-joint-column");
        return joints;
    }

    /** Shows one view large, or all four. */
    void show(String view) {
        wanted = view;
        showViews();
    }

    private static List<String> choices(boolean roomForFour) {
        List<String> choices = new ArrayList<>(VIEWS.keySet());
        if (roomForFour) {
            choices.add(0, ALL);
        }
        return choices;
    }

    private Segments<String> choice(boolean ofFour) {
        return new Segments<>(words.text("pose.view"), choices(ofFour), v -> words.text("view." + v), this::show);
    }

    private String shown() {
        return wanted.equals(ALL) && !roomForFour ? FIRST : wanted;
    }

    private void showViews() {
        Segments<String> choice = roomForFour ? fourOrOne : oneOnly;
        choice.take(shown());
        if (!viewChoice.getChildren().contains(choice)) {
            viewChoice.getChildren().setAll(choice);
        }
        figures.show(
                shown().equals(ALL)
                        ? List.copyOf(panes.values())
                        : List.of(Optional.ofNullable(panes.get(shown())).orElseThrow()));
    }

    /** The panes by the name of their view. */
    Map<String, FigurePane> panes() {
        return panes;
    }

    private void showKeyframes() {
        keyframes.getChildren().clear();
        List<PoseFrame> written = model.frames();
        if (written.isEmpty()) {
            return;
        }
        Segments<PoseFrame> choice = new Segments<>(
                words.text("pose.keyframe"),
                written,
                f -> f.letter() + " " + words.text("frame." + f.id()),
                model.frame()::set);
        choice.take(model.frame().get());
        keyframes.getChildren().add(choice);
        for (PoseFrame frame : PoseFrame.values()) {
            if (!written.contains(frame)) {
                keyframes
                        .getChildren()
                        .add(Buttons.small(
                                words.text("pose.keyframe.add", words.text("frame." + frame.id())),
                                () -> model.addFrame(frame)));
                break;
            }
        }
        if (model.frame().get() != PoseFrame.START) {
            PoseFrame frame = model.frame().get();
            keyframes
                    .getChildren()
                    .add(Buttons.small(
                            words.text("pose.keyframe.remove", words.text("frame." + frame.id())),
                            () -> model.removeFrame(frame)));
        }
        keyframes.getChildren().addAll(Labels.spring(), keys());
    }

    private HBox keys() {
        HBox keys = new HBox(6);
        keys.setAlignment(Pos.CENTER_LEFT);
        keys.setMinWidth(0);
        keys.getStyleClass().add("pose-keys");
        // Half a word helps nobody.
        keys.visibleProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> keys.getWidth() >= keys.prefWidth(-1) - 1, keys.widthProperty()));
        Map.of("[ ]", "frame", "V", "view", "M", "mirror").entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(key -> keys.getChildren()
                        .addAll(
                                Labels.key(key.getKey()),
                                Labels.text(words.text("pose.key." + key.getValue()), "third", "small")));
        return keys;
    }

    private void showMessages() {
        messages.getChildren().clear();
        model.refusal().get().ifPresent(why -> messages.getChildren().add(message("stop", why, Optional.empty())));
        for (PoseMessage message : model.messages().get()) {
            Problem problem = message.problem();
            messages.getChildren()
                    .add(message(
                            message.stops() ? "stop" : "remark",
                            problem.what() + ". " + problem.remedy() + ".",
                            message.fix()
                                    .map(fix -> Buttons.small(
                                            words.text("pose.take", PoseModel.number(fix.solved())),
                                            () -> model.takeSolved(fix)))));
        }
        if (messages.getChildren().isEmpty()) {
            messages.getChildren().add(message("fine", words.text("pose.fine"), Optional.empty()));
        }
    }

    private static HBox message(String kind, String text, Optional<Button> fix) {
        Label sign = Labels.text("", "finding-sign", kind);
        sign.setText(kind.equals("fine") ? "\u2713" : "!");
        VBox words = new VBox(4, Labels.prose(text, "small"));
        fix.ifPresent(words.getChildren()::add);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(8, sign, words);
        row.getStyleClass().add("finding");
        return row;
    }

    private void key(KeyEvent e) {
        if (e.getTarget() instanceof TextInputControl || e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
            return;
        }
        switch (e.getCode()) {
            case OPEN_BRACKET -> model.step(-1);
            case CLOSE_BRACKET -> model.step(1);
            case V -> {
                List<String> names = choices(roomForFour);
                show(names.get((names.indexOf(shown()) + 1) % names.size()));
                model.selected().get().ifPresent(at -> panes.values().stream()
                        .filter(p -> p.isVisible())
                        .findFirst()
                        .ifPresent(p -> Optional.ofNullable(p.grips().get(at)).ifPresent(Node::requestFocus)));
            }
            case M -> model.mirror();
            default -> {
                return;
            }
        }
        e.consume();
    }
}
