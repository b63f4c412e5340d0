package org.drillsheaf.desk.screen;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.screen.SafetyReading;
import org.drillsheaf.screen.SafetyStatus;

/** The safety questions at the head of the screen: all of them until each is answered, then one line. */
final class SafetyView extends VBox {
    private static final List<String> ANSWERS = List.of("no", "yes", "not-sure");

    private final ScreenModel model;
    private final Words words;
    private final Runnable done;
    private final Map<String, Segments<String>> rows = new LinkedHashMap<>();
    private List<String> shown = List.of();
    private final Button fold;
    private boolean unfolded;
    private boolean asking;

    /** @param done is told when the last question was answered */
    SafetyView(ScreenModel model, Words words, Runnable done) {
        this.model = model;
        this.words = words;
        this.done = done;
        fold = Buttons.link("", () -> {
            unfolded = !unfolded;
            show();
        });
        getStyleClass().add("safety");
    }

    void show() {
        List<SafetyQuestion> open = model.openQuestions();
        if (!open.isEmpty()) {
            unfolded = true;
            asking = true;
        } else if (asking && status().filter(SafetyReading::isClear).isPresent()) {
            asking = false;
            unfolded = false;
        }
        List<String> wanted = new ArrayList<>();
        if (unfolded) {
            model.questions().forEach(q -> wanted.add(q.id() + model.answer(q).orElse("")));
        }
        wanted.add(status().map(SafetyReading::status).map(Enum::name).orElse(""));
        wanted.add(Boolean.toString(unfolded));
        if (wanted.equals(shown)) {
            return;
        }
        shown = wanted;
        boolean hadFocus = getScene() != null && isInside(getScene().getFocusOwner());
        Optional<String> focused = rows.entrySet().stream()
                .filter(e -> e.getValue().getChildren().stream().anyMatch(javafx.scene.Node::isFocused))
                .map(Map.Entry::getKey)
                .findFirst();
        fill(open);
        if (hadFocus) {
            focused.map(rows::get).ifPresentOrElse(Segments::ready, fold::requestFocus);
        }
    }

    private boolean isInside(javafx.scene.@org.jspecify.annotations.Nullable Node node) {
        for (javafx.scene.Node n = node; n != null; n = n.getParent()) {
            if (n == this) {
                return true;
            }
        }
        return false;
    }

    private Optional<SafetyReading> status() {
        return model.client().evaluation().get().flatMap(Evaluation::reading).map(r -> r.safety());
    }

    private void fill(List<SafetyQuestion> open) {
        getChildren().clear();
        rows.clear();
        status().ifPresent(s -> verdict(s, open.size()));
        if (!unfolded) {
            return;
        }
        for (SafetyQuestion question : model.questions()) {
            getChildren().add(row(question));
        }
    }

    private void verdict(SafetyReading safety, int open) {
        if (safety.status() == SafetyStatus.STOPPED || safety.status() == SafetyStatus.HELD) {
            boolean stopped = safety.status() == SafetyStatus.STOPPED;
            List<SafetyReading.Flag> flags = stopped ? safety.stopping() : safety.holding();
            Message message = new Message(
                    stopped ? "stop" : "caution",
                    words.text(stopped ? "safety.stopped" : "safety.held"),
                    String.join(
                            "\n",
                            flags.stream()
                                    .map(f -> model.trade().say(f.words()))
                                    .toList()));
            VBox.setMargin(message, new javafx.geometry.Insets(4, 0, 8, 0));
            getChildren().add(message);
        }
        fold.setText(words.text(unfolded ? "safety.fold" : "safety.unfold"));
        HBox line = new HBox(
                10,
                Labels.text(words.text("safety.title"), "bold"),
                Labels.text(
                        open > 0
                                ? words.count("safety.open", open)
                                : words.text(
                                        "safety.status",
                                        words.text("safety.is."
                                                + safety.status().name().toLowerCase(Locale.ROOT))),
                        "second"),
                Labels.spring());
        if (open == 0) {
            line.getChildren().add(fold);
        } else {
            line.getChildren().addAll(Labels.text(words.text("safety.keys"), "small", "third"));
        }
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("safety-head");
        getChildren().add(line);
    }

    private VBox row(SafetyQuestion question) {
        Label text = Labels.prose(question.text(List.of(words.language(), "en")));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        Optional<String> answer = model.answer(question);
        Segments<String> segments = new Segments<>(
                question.text(List.of(words.language(), "en")),
                ANSWERS,
                a -> words.text("answer." + a),
                a -> answer(question, a));
        segments.take(answer.orElse(null));
        segments.setOnKeyPressed(key -> {
            String given = key.getCode() == KeyCode.N ? "no" : key.getCode() == KeyCode.Y ? "yes" : "";
            if (!given.isEmpty() && !key.isShortcutDown()) {
                segments.take(given);
                answer(question, given);
                next(question);
                key.consume();
            } else if (key.getCode() == KeyCode.DOWN || key.getCode() == KeyCode.ENTER) {
                next(question);
                key.consume();
            } else if (key.getCode() == KeyCode.UP) {
                step(question, -1);
                key.consume();
            }
        });
        rows.put(question.id(), segments);
        HBox line = new HBox(text, segments);
        line.getStyleClass().add("safety-row");
        if (answer.isEmpty()) {
            line.getStyleClass().add("open");
        }
        VBox row = new VBox(line);
        boolean details = answer.filter(a -> !a.equals("no")).isPresent()
                && (question.asksPartAndDate() || question.effect() == SafetyQuestion.Effect.HOLD);
        if (details) {
            row.getChildren().add(details(question));
        }
        return row;
    }

    private VBox details(SafetyQuestion question) {
        Map<String, TextField> fields = new LinkedHashMap<>();
        if (question.asksPartAndDate()) {
            fields.put("part", field(question, "part"));
            fields.put("date", field(question, "date"));
        }
        if (question.effect() == SafetyQuestion.Effect.HOLD) {
            fields.put("release/by", field(question, "release/by"));
            fields.put("release/date", field(question, "release/date"));
            fields.put("release/words", field(question, "release/words"));
        }
        Label wrong = Labels.prose("", "small", "bold");
        Button keep = Buttons.small(words.text("safety.keep"), () -> {
            Map<String, String> details = new LinkedHashMap<>();
            fields.forEach((key, field) -> details.put(key, field.getText()));
            Optional<String> mistake = mistake(details);
            wrong.setText(mistake.orElse(""));
            if (mistake.isEmpty()) {
                model.detail(question, details, words.text("undo.safety"));
            }
        });
        FlowPane row = new FlowPane(8, 4);
        row.setRowValignment(VPos.BOTTOM);
        fields.forEach((detail, field) -> row.getChildren().add(named(detail, field)));
        row.getChildren().add(keep);
        VBox box = new VBox(4, row, wrong);
        box.setPadding(new javafx.geometry.Insets(4, 0, 8, 24));
        return box;
    }

    /** A clinician's word counts only whole: who, when and what. */
    private Optional<String> mistake(Map<String, String> details) {
        long release = details.entrySet().stream()
                .filter(e -> e.getKey().startsWith("release/") && !e.getValue().isBlank())
                .count();
        if (release != 0 && release != 3) {
            return Optional.of(words.text("safety.release-whole"));
        }
        for (Map.Entry<String, String> detail : details.entrySet()) {
            if (detail.getKey().endsWith("date") && !detail.getValue().isBlank()) {
                try {
                    LocalDate.parse(detail.getValue().strip());
                } catch (DateTimeParseException e) {
                    return Optional.of(words.text("safety.date-wrong"));
                }
            }
        }
        return Optional.empty();
    }

    private TextField field(SafetyQuestion question, String detail) {
        TextField field = new TextField(model.detail(question, detail).orElse(""));
        field.setAccessibleRoleDescription(name(detail));
        if (detail.endsWith("date")) {
            field.setPromptText(words.text("safety.date-form"));
        }
        field.setPrefColumnCount(detail.endsWith("words") ? 18 : 9);
        return field;
    }

    private String name(String detail) {
        return words.text("safety." + detail.replace('/', '-'));
    }

    /** The name stays to be read while something is typed. */
    private VBox named(String detail, TextField field) {
        Label label = Labels.text(name(detail), "small", "second");
        label.setLabelFor(field);
        return new VBox(2, label, field);
    }

    private void answer(SafetyQuestion question, String answer) {
        model.answer(question, answer, words.text("undo.safety"));
    }

    private void next(SafetyQuestion question) {
        if (!step(question, 1) && model.openQuestions().isEmpty()) {
            done.run();
        }
    }

    private boolean step(SafetyQuestion question, int by) {
        List<String> ids = new ArrayList<>(rows.keySet());
        int index = ids.indexOf(question.id()) + by;
        if (index < 0 || index >= ids.size()) {
            if (by > 0 && !ready()) {
                done.run();
            }
            return false;
        }
        Objects.requireNonNull(rows.get(ids.get(index))).ready();
        return true;
    }

    /** Puts the focus on the first question without an answer. */
    boolean ready() {
        return rows.entrySet().stream()
                .filter(e -> model.questions().stream()
                        .anyMatch(q ->
                                q.id().equals(e.getKey()) && model.answer(q).isEmpty()))
                .findFirst()
                .map(e -> {
                    e.getValue().ready();
                    return true;
                })
                .orElse(false);
    }
}
