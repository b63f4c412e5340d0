package org.drillsheaf.desk.look;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.PasswordField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;

/**
 * Says that Caps Lock is on while the coach is in a field whose letters cannot be seen. Says nothing where the platform cannot
 * tell.
 */
public final class CapsLockHint extends HBox {
    private final Supplier<Optional<Boolean>> capsLock;
    private final PasswordField[] fields;

    public CapsLockHint(String words, PasswordField... fields) {
        this(words, () -> Platform.isKeyLocked(KeyCode.CAPS), fields);
    }

    /** @param capsLock whether it is on; empty when nobody knows */
    CapsLockHint(String words, Supplier<Optional<Boolean>> capsLock, PasswordField... fields) {
        super(8, Labels.text("!", "finding-sign", "asks"), Labels.prose(words));
        this.capsLock = capsLock;
        this.fields = fields;
        setAlignment(Pos.CENTER_LEFT);
        for (PasswordField field : fields) {
            field.focusedProperty().addListener((of, before, now) -> look());
            // The key itself counts only once it is let go on some platforms, at once on others.
            field.addEventFilter(KeyEvent.KEY_PRESSED, e -> look());
            field.addEventFilter(KeyEvent.KEY_RELEASED, e -> look());
        }
        look();
    }

    private void look() {
        boolean needed = false;
        for (PasswordField field : fields) {
            needed |= field.isFocused();
        }
        boolean shown = needed && capsLock.get().orElse(false);
        setVisible(shown);
        setManaged(shown);
    }
}
