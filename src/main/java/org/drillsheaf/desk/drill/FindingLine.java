package org.drillsheaf.desk.drill;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.drillsheaf.Problem;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;

/** One finding: its sign by weight, what is wrong in bold, what would be right. */
final class FindingLine {
    private FindingLine() {}

    static HBox of(Finding finding, Words words) {
        Problem problem = finding.problem();
        Label sign = Labels.text(
                problem.severity() == Problem.Severity.ADVICE ? "i" : "!",
                "finding-sign",
                finding.stops() ? "stop" : problem.severity() == Problem.Severity.WARNING ? "asks" : "fine");
        String where = finding.item().isPresent()
                ? words.text("form.item", finding.item().getAsInt()) + " "
                : "";
        Text what = new Text(where + problem.what() + ". ");
        what.getStyleClass().addAll("text", "bold", "small");
        Text remedy = new Text(problem.remedy() + ".");
        remedy.getStyleClass().addAll("text", "small");
        TextFlow flow = new TextFlow(what, remedy);
        HBox.setHgrow(flow, Priority.ALWAYS);
        HBox line = new HBox(8, sign, flow);
        line.getStyleClass().add("finding");
        return line;
    }
}
