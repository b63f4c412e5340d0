package org.drillsheaf.desk.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.event.Event;
import javafx.scene.Scene;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.drillsheaf.desk.DeskRun;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A passphrase typed in capitals by mistake is refused for no reason that one could see. */
class CapsLockHintTest {
    private final AtomicReference<Optional<Boolean>> capsLock = new AtomicReference<>(Optional.of(false));
    private Stage stage;
    private PasswordField passphrase;
    private TextField name;
    private CapsLockHint hint;

    @BeforeEach
    void aPassphraseAndAName() {
        DeskRun.startToolkit();
        DeskRun.fx(() -> {
            passphrase = new PasswordField();
            name = new TextField();
            hint = new CapsLockHint("Caps Lock is on.", capsLock::get, passphrase);
            stage = new Stage();
            stage.setScene(new Scene(new VBox(passphrase, hint, name)));
            stage.show();
            stage.requestFocus();
            return true;
        });
        focus(passphrase);
    }

    @AfterEach
    void close() {
        DeskRun.fx(() -> {
            stage.close();
            return true;
        });
    }

    private void focus(TextField field) {
        DeskRun.fx(() -> {
            field.requestFocus();
            return true;
        });
    }

    private void press(Optional<Boolean> then) {
        DeskRun.fx(() -> {
            capsLock.set(then);
            Event.fireEvent(
                    passphrase, new KeyEvent(KeyEvent.KEY_RELEASED, "", "", KeyCode.CAPS, false, false, false, false));
            return true;
        });
    }

    private boolean isShown() {
        return DeskRun.fx(() -> hint.isVisible() && hint.isManaged());
    }

    @Test
    void comesAndGoesWithTheKey() {
        assertThat(isShown()).isFalse();
        press(Optional.of(true));
        assertThat(isShown()).isTrue();
        press(Optional.of(false));
        assertThat(isShown()).isFalse();
    }

    @Test
    void isThereOnlyWhileThePassphraseIsTyped() {
        press(Optional.of(true));
        focus(name);
        assertThat(isShown()).isFalse();
        focus(passphrase);
        assertThat(isShown()).as("it was on before the field was entered").isTrue();
    }

    @Test
    void saysNothingWhereThePlatformCannotTell() {
        press(Optional.empty());
        assertThat(isShown()).isFalse();
    }
}
