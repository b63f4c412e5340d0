package org.drillsheaf.desk.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.program.CoveredGoal;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.PhaseRow;

/** One phase of a program: minutes and goals as bars, the drills in the order of the session, the gate to the next phase. */
final class PhaseColumn extends VBox {
    private static final int MOST_GOALS = 4;
    private static final int FEW_GOALS = 1;

    /** The most of the height that the gate takes from the drills. */
    private static final double FOOT_SHARE = 0.18;

    private final List<EntryView> entries = new ArrayList<>();

    PhaseColumn(
            ProgramModel model, Words words, PhasePlan plan, int targetMinutes, boolean little, EntryView.Hands hands) {
        getStyleClass().add("phase-column");
        boolean now = plan.standing() == PhasePlan.Standing.NOW;
        if (now) {
            getStyleClass().add("now");
        }
        PhaseRow row = model.row(plan.phase());
        List<String> languages = List.of(words.language(), "en");
        HBox head = new HBox(
                8,
                Labels.text(model.name(plan.phase()), "heading"),
                Labels.text(words.text("standing." + plan.standing().id()), "small", "second"));
        head.setAlignment(Pos.BASELINE_LEFT);
        getChildren().add(head);
        if (!little) {
            getChildren().add(Labels.prose(row.sentence().best(languages), "small", "second"));
        }
        if (!plan.entries().isEmpty()) {
            getChildren()
                    .add(bar(
                            words.text("program.minutes-of", plan.minutes(), targetMinutes),
                            "bold",
                            new BarView(plan.minutes(), targetMinutes, false),
                            ""));
            goals(model, words, plan, little ? FEW_GOALS : MOST_GOALS);
        }
        VBox drills = new VBox();
        for (Entry entry : plan.entries()) {
            EntryView view = new EntryView(model, words, plan.phase(), entry, hands);
            entries.add(view);
            drills.getChildren().add(view);
        }
        plan.remarks().forEach(r -> drills.getChildren()
                .add(Labels.prose(model.trade().say(r), "small", "second")));
        BorderPane body = new BorderPane(scroll(drills));
        VBox.setVgrow(body, Priority.ALWAYS);
        getChildren().add(body);
        model.gate(plan.phase()).ifPresent(gate -> {
            GateFoot foot = new GateFoot(gate, model.trade(), words);
            // With little room the drills keep theirs: the foot says how it stands, and its lines come after the last
            // drill.
            boolean tight = little && !entries.isEmpty();
            if (tight) {
                drills.getChildren().add(foot.lines());
            }
            Region bottom = tight ? foot.standing() : foot.whole();
            if (!entries.isEmpty()) {
                bottom.maxHeightProperty().bind(heightProperty().multiply(FOOT_SHARE));
            }
            body.setBottom(bottom);
        });
    }

    private static ScrollPane scroll(VBox drills) {
        ScrollPane scroll = new ScrollPane(drills);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        return scroll;
    }

    /** The goals that matter most here and those that fall short; the rest in one line. */
    private void goals(ProgramModel model, Words words, PhasePlan plan, int most) {
        List<CoveredGoal> asked = plan.goals().stream()
                .filter(g -> g.need().asksForSomething())
                .sorted(Comparator.comparing((CoveredGoal g) -> g.missing() == 0)
                        .thenComparing(g -> -g.need().weight()))
                .toList();
        asked.stream().limit(most).forEach(g -> getChildren().add(goal(model, words, g)));
        List<CoveredGoal> rest = asked.stream().skip(most).toList();
        if (!rest.isEmpty()) {
            int missing = (int) rest.stream().filter(g -> g.missing() > 0).count();
            Label more = Labels.text(
                    missing == 0
                            ? words.count("program.more-covered", rest.size())
                            : words.text("program.more-goals", rest.size(), missing),
                    "small",
                    "third");
            more.setTooltip(new Tooltip(rest.stream()
                    .map(g -> model.goal(g.need().goal()) + ": "
                            + words.text(
                                    "program.covered", g.covered(), g.need().target()))
                    .collect(Collectors.joining("\n"))));
            getChildren().add(more);
        }
    }

    private HBox goal(ProgramModel model, Words words, CoveredGoal goal) {
        int target = goal.need().target();
        boolean isShort = goal.missing() > 0;
        return bar(
                model.goal(goal.need().goal()),
                isShort ? "bold" : "second",
                new BarView(goal.covered(), target, true),
                words.text("program.covered", goal.covered(), target));
    }

    private HBox bar(String name, String weight, BarView bar, String number) {
        Label label = Labels.prose(name, "small", weight);
        HBox.setHgrow(label, Priority.ALWAYS);
        label.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(label, bar);
        if (number.isEmpty()) {
            label.setMinWidth(Region.USE_PREF_SIZE);
            HBox.setHgrow(label, Priority.NEVER);
            HBox.setHgrow(bar, Priority.ALWAYS);
            bar.setMaxWidth(Double.MAX_VALUE);
        } else {
            Label count = Labels.text(number, "small", weight);
            count.setMinWidth(Region.USE_PREF_SIZE);
            row.getChildren().add(count);
            label.getStyleClass().add("bar-name");
        }
        row.getStyleClass().add("bar-row");
        return row;
    }

    List<EntryView> entries() {
        return entries;
    }
}
