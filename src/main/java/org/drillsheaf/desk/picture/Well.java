package org.drillsheaf.desk.picture;

import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;
import javafx.geometry.NodeOrientation;
import javafx.scene.AccessibleRole;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** A picture on paper, as large as fits; paper stays light in every theme. */
public final class Well extends Region {
    private final ImageView view = new ImageView();
    private final ChangeListener<Optional<Image>> arrived = (of, before, now) -> view.setImage(now.orElse(null));
    private @Nullable ObservableValue<Optional<Image>> shown;

    /** @param text what is to be seen, for screen readers */
    public Well(String text) {
        getStyleClass().add("well");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(text);
        setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        view.setPreserveRatio(true);
        view.setSmooth(true);
        getChildren().add(view);
    }

    public Well(String text, ObservableValue<Optional<Image>> picture) {
        this(text);
        show(text, picture);
    }

    /** Shows another picture. */
    public void show(String text, ObservableValue<Optional<Image>> picture) {
        setAccessibleText(text);
        shown = picture;
        picture.addListener(new WeakChangeListener<>(arrived));
        view.setImage(picture.getValue().orElse(null));
        requestLayout();
    }

    /** What is shown, so that it stays as long as the well. */
    @Nullable
    ObservableValue<Optional<Image>> shown() {
        return shown;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth() - getInsets().getLeft() - getInsets().getRight();
        double height = getHeight() - getInsets().getTop() - getInsets().getBottom();
        view.setFitWidth(Math.max(1, width));
        view.setFitHeight(Math.max(1, height));
        double w = view.getBoundsInLocal().getWidth();
        double h = view.getBoundsInLocal().getHeight();
        view.relocate(getInsets().getLeft() + (width - w) / 2, getInsets().getTop() + (height - h) / 2);
    }
}
