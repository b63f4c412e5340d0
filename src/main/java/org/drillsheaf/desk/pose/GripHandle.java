package org.drillsheaf.desk.pose;

import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;

/**
 * One joint on the drawing: pulled by the mouse, turned by the keys. Arrow keys left and right turn its first movement, up and
 * down its second, a degree or with Shift five; Home and End go to the limits, 0 to neutral.
 */
final class GripHandle extends Region {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    /** A joint with nothing before it is turned like a dial. Pixels a degree. */
    private static final double DIAL = 3;

    private static final int FAST = 5;

    private final PoseModel model;
    private final Grip.At at;
    private final FigurePane pane;
    private double pressedAt;
    private double pressedDegrees;

    GripHandle(PoseModel model, Grip.At at, FigurePane pane) {
        this.model = model;
        this.at = at;
        this.pane = pane;
        getStyleClass().add("grip");
        setAccessibleRole(AccessibleRole.SLIDER);
        setId("grip-" + at.point());
        setManaged(false);
        focusedProperty().addListener((of, before, now) -> {
            if (now) {
                model.selected().set(Optional.of(at));
            }
        });
        model.selected().addListener((of, before, now) -> look());
        model.rows().addListener((of, before, now) -> setAccessibleText(words()));
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        addEventHandler(MouseEvent.MOUSE_RELEASED, e -> {
            model.turned();
            model.draft().settle();
            e.consume();
        });
        setAccessibleText(words());
    }

    private void look() {
        boolean chosen = model.selected().get().filter(at::equals).isPresent();
        pseudoClassStateChanged(CHOSEN, chosen);
        setViewOrder(chosen ? -1 : 0);
    }

    private List<Motion> keys() {
        return at.grip().keys(angles(), at.anySide());
    }

    private JointAngles angles() {
        return model.solved().get().map(p -> p.pose().angles()).orElse(JointAngles.STRAIGHT);
    }

    private Optional<JointRow> row(Motion motion) {
        return model.rows().get().stream()
                .filter(r ->
                        r.motion() == motion && (r.side().isEmpty() || r.side().equals(at.side())))
                .findFirst();
    }

    /** Both movements with their degrees, for screen readers and for the callout. */
    String words() {
        StringBuilder words = new StringBuilder();
        for (Motion motion : keys()) {
            Optional<JointRow> row = row(motion);
            if (row.isPresent()) {
                JointLimits.Limit limit = row.get().limit();
                words.append(words.isEmpty() ? "" : "\n")
                        .append(model.name(motion, motion.isPaired() ? at.side() : Optional.empty()))
                        .append(' ')
                        .append(PoseModel.number(row.get().degrees()))
                        .append("°, ")
                        .append(PoseModel.number(limit.least()))
                        .append(" – ")
                        .append(PoseModel.number(limit.most()))
                        .append('°');
            }
        }
        return words.toString();
    }

    private void key(KeyEvent e) {
        List<Motion> motions = keys();
        int by = e.isShiftDown() ? FAST : 1;
        boolean taken = true;
        switch (e.getCode()) {
            case LEFT -> turn(motions.get(0), -by);
            case RIGHT -> turn(motions.get(0), by);
            case DOWN -> turn(motions.get(1), -by);
            case UP -> turn(motions.get(1), by);
            case HOME -> to(motions.get(0), JointLimits.of(motions.get(0)).least());
            case END -> to(motions.get(0), JointLimits.of(motions.get(0)).most());
            case DIGIT0, NUMPAD0 -> to(motions.get(0), 0);
            default -> taken = false;
        }
        if (taken && !e.isControlDown() && e.getCode() != KeyCode.TAB) {
            e.consume();
        }
    }

    private void turn(Motion motion, int by) {
        row(motion).ifPresent(row -> {
            long wanted = row.whole() + by;
            long within = Math.round(
                    Math.max(row.limit().least(), Math.min(row.limit().most(), wanted)));
            model.set(motion, row.side(), within);
        });
    }

    private void to(Motion motion, double degrees) {
        row(motion).ifPresent(row -> model.set(motion, row.side(), Math.round(degrees)));
    }

    private void press(MouseEvent e) {
        requestFocus();
        model.selected().set(Optional.of(at));
        pressedAt = e.getSceneX();
        pressedDegrees = row(keys().get(0)).map(JointRow::degrees).orElse(0.0);
        e.consume();
    }

    private void drag(MouseEvent e) {
        Side side = at.anySide();
        if (at.grip().pull(angles(), side).isEmpty()) {
            row(keys().get(0))
                    .ifPresent(row -> model.turning(
                            row.motion(), row.side(), pressedDegrees + (e.getSceneX() - pressedAt) / DIAL));
        } else {
            Point2D place = pane.sceneToLocal(e.getSceneX(), e.getSceneY());
            Stand stand = pane.stand();
            model.pulling(at, pane.view(), stand.across(place.getX()), stand.upward(place.getY()));
        }
        e.consume();
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        Optional<JointRow> row = row(keys().get(0));
        return switch (attribute) {
            case VALUE -> row.map(JointRow::degrees).orElse(0.0);
            case MIN_VALUE -> row.map(r -> r.limit().least()).orElse(0.0);
            case MAX_VALUE -> row.map(r -> r.limit().most()).orElse(0.0);
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }
}
