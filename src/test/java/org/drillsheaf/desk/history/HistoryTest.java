package org.drillsheaf.desk.history;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HistoryTest {

    @Test
    void takesBackAndBringsBack() {
        History<String> history = new History<>("a");
        history.put("b typed", "", "ab");
        history.put("c typed", "", "abc");
        assertThat(history.undoName()).contains("c typed");
        assertThat(history.undo()).isTrue();
        assertThat(history.now()).isEqualTo("ab");
        assertThat(history.undo()).isTrue();
        assertThat(history.now()).isEqualTo("a");
        assertThat(history.undo()).isFalse();
        assertThat(history.redo()).isTrue();
        assertThat(history.redo()).isTrue();
        assertThat(history.now()).isEqualTo("abc");
        assertThat(history.redo()).isFalse();
    }

    @Test
    void theDigitsOfOneFieldAreOneStep() {
        History<String> history = new History<>("");
        history.put("field", "field", "1");
        history.put("field", "field", "12");
        history.endGroup();
        history.put("field", "field", "123");
        history.undo();
        assertThat(history.now()).isEqualTo("12");
        history.undo();
        assertThat(history.now()).isEmpty();
    }

    @Test
    void aNewStepForgetsWhatWasTakenBack() {
        History<String> history = new History<>("a");
        history.put("b", "", "ab");
        history.undo();
        history.put("c", "", "ac");
        assertThat(history.redoName()).isEmpty();
        history.undo();
        assertThat(history.now()).isEqualTo("a");
    }

    @Test
    void whatChangesNothingIsNoStep() {
        History<String> history = new History<>("a");
        history.put("nothing", "", "a");
        assertThat(history.undoName()).isEmpty();
    }

    @Test
    void aChangeFromElsewhereLiesUnderEveryStep() {
        History<String> history = new History<>("mine:1");
        history.put("2", "", "mine:2");
        history.underlay(d -> "theirs " + d);
        assertThat(history.now()).isEqualTo("theirs mine:2");
        history.undo();
        assertThat(history.now()).isEqualTo("theirs mine:1");
        history.redo();
        assertThat(history.now()).isEqualTo("theirs mine:2");
    }
}
