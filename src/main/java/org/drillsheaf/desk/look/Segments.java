package org.drillsheaf.desk.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.NodeOrientation;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** A row of choices of which at most one is taken. */
public final class Segments<T> extends HBox {
    private final List<T> values;
    private final List<ToggleButton> buttons = new ArrayList<>();
    private final ToggleGroup group = new ToggleGroup();

    /**
     * @param name what is chosen, for screen readers
     * @param chosen is told when the coach takes another one
     */
    public Segments(String name, List<T> values, Function<T, String> words, Consumer<T> chosen) {
        this.values = List.copyOf(values);
        getStyleClass().add("segments");
        for (T value : values) {
            ToggleButton button = new ToggleButton(words.apply(value));
            button.setToggleGroup(group);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setAccessibleText(name + ": " + words.apply(value));
            button.setOnAction(e -> {
                button.setSelected(true);
                oneStop(buttons.indexOf(button));
                button.requestFocus(); // a press alone focuses only the one that Tab stops at
                chosen.accept(value);
            });
            button.addEventFilter(KeyEvent.KEY_PRESSED, this::arrows);
            buttons.add(button);
        }
        take(null);
        buttons.get(0).getStyleClass().add("first");
        buttons.get(buttons.size() - 1).getStyleClass().add("last");
        getChildren().addAll(buttons);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    }

    /** Shows what is taken without telling anybody; null for nothing. */
    public void take(@Nullable T value) {
        int index = value == null ? -1 : values.indexOf(value);
        group.selectToggle(index < 0 ? null : buttons.get(index));
        oneStop(Math.max(0, index));
    }

    /** Tab stops once in the row; arrows go on inside it. */
    private void oneStop(int index) {
        for (int i = 0; i < buttons.size(); i++) {
            buttons.get(i).setFocusTraversable(i == index);
        }
    }

    private void arrows(KeyEvent key) {
        int step = key.getCode() == KeyCode.RIGHT ? 1 : key.getCode() == KeyCode.LEFT ? -1 : 0;
        if (step == 0 || key.isShortcutDown() || key.isAltDown()) {
            return;
        }
        boolean mirrored = getEffectiveNodeOrientation() == NodeOrientation.RIGHT_TO_LEFT;
        int next = buttons.indexOf(key.getSource()) + (mirrored ? -step : step);
        if (next >= 0 && next < buttons.size()) {
            oneStop(next);
            buttons.get(next).requestFocus();
            buttons.get(next).fire();
        }
        key.consume();
    }

    /** Puts the focus on what is taken, or on the first. */
    public void ready() {
        buttons.stream().filter(ToggleButton::isFocusTraversable).findFirst().ifPresent(ToggleButton::requestFocus);
    }

    /** The button of a value. */
    public ToggleButton button(T value) {
        return buttons.get(values.indexOf(value));
    }
}
