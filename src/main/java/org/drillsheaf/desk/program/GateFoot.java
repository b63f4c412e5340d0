package org.drillsheaf.desk.program;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.GateResult;

/** What stands at the foot of a phase: whether the next one may begin, and what is still open before it may. */
record GateFoot(GateResult gate, TradeWords trade, Words words) {

    /** How the gate stands, in one line. */
    Label standing() {
        Label line = Labels.prose(head(), "small", "bold", "gate");
        line.setMaxWidth(Double.MAX_VALUE);
        return line;
    }

    /** The lines that are still open; of a gate that is met, all. */
    Label lines() {
        return Labels.prose(trade.sentence(told()) + ".", "small", "second", "gate");
    }

    /** Both; of more lines than a foot has room for, the rest is scrolled to. */
    ScrollPane whole() {
        Text head = new Text(head() + ": ");
        head.getStyleClass().addAll("text", "small", "bold");
        String told = trade.say(told()) + ".";
        Text lines = new Text(told);
        lines.getStyleClass().addAll("text", "small");
        ScrollPane foot = new ScrollPane(new TextFlow(head, lines));
        foot.setFitToWidth(true);
        foot.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        foot.setAccessibleText(head() + ": " + told);
        foot.getStyleClass().addAll("gate", "gate-foot");
        return foot;
    }

    private boolean isMet() {
        return gate.status() == GateResult.Status.MET;
    }

    private List<GateResult.Line> required() {
        return gate.lines().stream().filter(GateResult.Line::required).toList();
    }

    private List<GateResult.Line> open() {
        return required().stream().filter(line -> !line.truth().isTrue()).toList();
    }

    private String head() {
        return isMet()
                ? words.text("program.gate-met")
                : words.text("program.to-move-on", open().size(), required().size());
    }

    private Saying told() {
        return Saying.joined(
                Saying.Joint.SEMICOLON,
                (isMet() ? required() : open())
                        .stream().map(GateResult.Line::words).toList());
    }
}
