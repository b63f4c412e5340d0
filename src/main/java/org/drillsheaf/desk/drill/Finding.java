package org.drillsheaf.desk.drill;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.drillsheaf.Problem;
import org.drillsheaf.YamlNode;

/**
 * Something the check found, and the field it concerns.
 *
 * @param field key of the drill's file, for example {@code action}; empty when it concerns the whole file
 * @param item number of the item in the field's list, from 1
 */
public record Finding(String field, OptionalInt item, Problem problem) {

    /** Puts each problem beside the last field that begins at or before its line. */
    static List<Finding> place(List<Problem> problems, YamlNode file) {
        return problems.stream().map(p -> place(p, file)).toList();
    }

    private static Finding place(Problem problem, YamlNode file) {
        String field = "";
        YamlNode at = file;
        for (Map.Entry<String, YamlNode> entry : file.entries().entrySet()) {
            if (entry.getValue().line() <= problem.line()) {
                field = entry.getKey();
                at = entry.getValue();
            }
        }
        int item = 0;
        for (YamlNode part : at.items()) {
            item += part.line() <= problem.line() ? 1 : 0;
        }
        return new Finding(field, item > 0 ? OptionalInt.of(item) : OptionalInt.empty(), problem);
    }

    public boolean stops() {
        return problem.severity() == Problem.Severity.ERROR;
    }

    /** What is wrong and what would be right, as two sentences. */
    public String words() {
        return problem.what() + ". " + problem.remedy() + ".";
    }
}
