package org.drillsheaf.desk.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.css.PseudoClass;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.figure.body.Motion;

/** A row for every movement: name, slider with the limits of a body at its ends, whole degrees, and what set them. */
final class JointRows extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    /** Movements that most drills use; the others come when asked for, or when they are used. */
    private static final Set<Motion> USUAL = Set.of(
            Motion.HEAD_NOD,
            Motion.NECK_FLEX,
            Motion.SPINE_LUMBAR,
            Motion.SPINE_THORACIC,
            Motion.PELVIS_TILT,
            Motion.SHOULDER_FLEX,
            Motion.SHOULDER_FROM_TRUNK,
            Motion.SHOULDER_ABD,
            Motion.ELBOW_FLEX,
            Motion.HIP_FLEX,
            Motion.HIP_ABD,
            Motion.HIP_INT,
            Motion.KNEE_FLEX,
            Motion.ANKLE_DORSI);

    private final PoseModel model;
    private final Words words;
    private final List<Row> rows = new ArrayList<>();
    private boolean all;

    JointRows(PoseModel model, Words words) {
        this.model = model;
        this.words = words;
        getStyleClass().add("joint-rows");
        model.rows().addListener((of, before, now) -> show());
        model.selected().addListener((of, before, now) -> choose());
        show();
    }

    private void show() {
        List<JointRow> wanted = model.rows().get().stream()
                .filter(r -> all || USUAL.contains(r.motion()) || r.whole() != 0)
                .toList();
        boolean same = wanted.size() == rows.size();
        for (int i = 0; same && i < wanted.size(); i++) {
            same = rows.get(i).joint.isSame(wanted.get(i));
        }
        if (same) {
            for (int i = 0; i < wanted.size(); i++) {
                rows.get(i).show(wanted.get(i));
            }
            return;
        }
        Optional<JointRow> focused =
                rows.stream().filter(r -> r.holdsFocus()).map(r -> r.joint).findFirst();
        rows.clear();
        getChildren().clear();
        for (JointRow joint : wanted) {
            Row row = new Row(joint);
            rows.add(row);
            getChildren().add(row);
        }
        Button more = Buttons.link(words.text(all ? "pose.joints.usual" : "pose.joints.all"), () -> {
            all = !all;
            rows.clear();
            show();
        });
        getChildren().add(more);
        focused.flatMap(f -> rows.stream()
                        .filter(r -> r.joint.motion() == f.motion())
                        .findFirst())
                .ifPresent(r -> r.slider.requestFocus());
        choose();
    }

    private void choose() {
        Optional<Grip.At> at = model.selected().get();
        for (Row row : rows) {
            boolean chosen = at.isPresent() && belongs(row.joint, at.get());
            row.pseudoClassStateChanged(CHOSEN, chosen);
        }
    }

    private boolean belongs(JointRow row, Grip.At at) {
        return model.solved()
                        .get()
                        .map(p -> at.grip().keys(p.pose().angles(), at.anySide()))
                        .orElse(List.of())
                        .contains(row.motion())
                && (row.side().isEmpty() || row.side().equals(at.side()));
    }

    /** One movement. */
    private final class Row extends HBox {
        private final Slider slider = new Slider();
        private final TextField field = new TextField();
        private final Label range = Labels.text("", "third", "small");
        private JointRow joint;
        private boolean showing;

        Row(JointRow joint) {
            this.joint = joint;
            getStyleClass().add("joint-row");
            setAlignment(Pos.CENTER_LEFT);
            String name = model.name(joint.motion(), joint.side());
            Label joinName = Labels.prose(name, "joint-name");
            HBox.setHgrow(joinName, Priority.ALWAYS);
            slider.setMin(joint.limit().least());
            slider.setMax(joint.limit().most());
            slider.setBlockIncrement(1);
            slider.setAccessibleText(name);
            slider.getStyleClass().add("joint-slider");
            slider.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
            slider.addEventFilter(KeyEvent.KEY_PRESSED, this::fast);
            slider.valueProperty().addListener((of, before, now) -> slid(now.doubleValue()));
            slider.valueChangingProperty().addListener((of, before, now) -> {
                if (!now) {
                    let();
                }
            });
            field.getStyleClass().add("degrees");
            field.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
            field.setAlignment(Pos.CENTER_RIGHT);
            field.setTextFormatter(new TextFormatter<>(
                    change -> change.getControlNewText().matches("[-\u2212]?\\d{0,3}°?") ? change : null));
            field.setOnAction(e -> type());
            joinName.setLabelFor(field);
            field.focusedProperty().addListener((of, before, now) -> {
                if (!now) {
                    type();
                }
            });
            field.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
                if (e.getCode() == KeyCode.ESCAPE) {
                    write();
                    e.consume();
                }
            });
            range.getStyleClass().add("joint-range");
            getChildren().addAll(joinName, slider, field, range);
            if (joint.motion().isPaired() && joint.side().isEmpty()) {
                Button split = Buttons.link(words.text("pose.split"), () -> model.split(joint.motion()));
                split.getStyleClass().add("tiny");
                split.setAccessibleText(words.text("pose.split.of", name));
                getChildren().add(split);
            } else {
                Region room = new Region();
                room.getStyleClass().add("split-room");
                getChildren().add(room);
            }
            show(joint);
        }

        boolean holdsFocus() {
            return slider.isFocused() || field.isFocused();
        }

        void show(JointRow now) {
            joint = now;
            showing = true;
            if (!slider.isValueChanging()) {
                slider.setValue(now.degrees());
            }
            showing = false;
            if (!field.isFocused()) {
                write();
            }
            range.setText(
                    now.byTouch()
                            ? words.text("pose.by-touch")
                            : words.text(
                                    "pose.range",
                                    PoseModel.number(now.limit().least()),
                                    PoseModel.number(now.limit().most())));
        }

        private void write() {
            field.setText(PoseModel.number(joint.degrees()) + "°");
        }

        private void slid(double degrees) {
            if (showing) {
                return;
            }
            if (slider.isValueChanging()) {
                model.turning(joint.motion(), joint.side(), degrees);
            } else {
                model.set(joint.motion(), joint.side(), Math.round(degrees));
            }
        }

        private void let() {
            model.turned();
            model.draft().settle();
        }

        private void fast(KeyEvent e) {
            int by = e.isShiftDown() ? 5 : 1;
            int way = e.getCode() == KeyCode.LEFT || e.getCode() == KeyCode.DOWN
                    ? -1
                    : e.getCode() == KeyCode.RIGHT || e.getCode() == KeyCode.UP ? 1 : 0;
            boolean neutral = e.getCode() == KeyCode.DIGIT0 || e.getCode() == KeyCode.NUMPAD0;
            if (way != 0 || neutral) {
                double wanted = neutral ? 0 : joint.whole() + way * by;
                model.set(
                        joint.motion(),
                        joint.side(),
                        Math.round(Math.max(slider.getMin(), Math.min(slider.getMax(), wanted))));
                e.consume();
            }
        }

        private void type() {
            String digits =
                    field.getText().replace('\u2212', '-').replace("°", "").strip();
            if (!digits.matches("-?\\d{1,3}") || Long.parseLong(digits) == joint.whole()) {
                write();
                return;
            }
            if (!model.set(joint.motion(), joint.side(), Long.parseLong(digits))) {
                write();
            }
            model.draft().settle();
        }
    }
}
