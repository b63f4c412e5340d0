package org.drillsheaf.desk.look;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;

/** Text that breaks into lines and is as high as they are, so that all of it can be read. Tab goes on to the next field. */
public final class GrowingArea extends TextArea {
    /** Room that is not for letters, as the style sheet gives it, in em. */
    private static final double BESIDE = 1.6;

    private static final double ABOVE_AND_BELOW = 0.7;

    private final Text measure = new Text();
    private final int leastLines;

    /**
     * @param text the first one
     * @param leastLines so high it is at least, from 1; with 1 it holds one paragraph, and Enter begins no other
     */
    public GrowingArea(String text, int leastLines) {
        super(text);
        this.leastLines = leastLines;
        setWrapText(true);
        setPrefColumnCount(10);
        setMinWidth(0);
        textProperty().addListener((of, before, now) -> fit());
        widthProperty().addListener((of, before, now) -> fit());
        fontProperty().addListener((of, before, now) -> fit());
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        fit();
    }

    private void fit() {
        double em = getFont().getSize();
        measure.setFont(getFont());
        measure.setWrappingWidth(Math.max(em, getWidth() - BESIDE * em));
        measure.setText("\n".repeat(leastLines - 1));
        double least = measure.getLayoutBounds().getHeight();
        measure.setText(getText());
        double height = Math.max(least, measure.getLayoutBounds().getHeight()) + ABOVE_AND_BELOW * em;
        setMinHeight(height);
        setPrefHeight(height);
    }

    private void pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.TAB && !key.isControlDown()) {
            fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, key.isShiftDown(), true, false, false));
            key.consume();
        } else if (key.getCode() == KeyCode.ENTER && leastLines == 1) {
            key.consume();
        }
    }
}
