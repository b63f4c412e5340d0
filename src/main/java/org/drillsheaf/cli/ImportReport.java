package org.drillsheaf.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillsheaf.Problem;
import org.drillsheaf.exchange.DrillChange;
import org.drillsheaf.exchange.ImportPlan;
import org.drillsheaf.exchange.merge.FieldChange;

/**
 * What an import would do or did, for people and for machines.
 *
 * @param isWished whether it was to be applied
 * @param isApplied whether it was
 */
record ImportReport(ImportPlan plan, boolean isWished, boolean isApplied) {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    /** A longer value is cut on the terminal; the JSON has all of it. Characters. */
    private static final int LONGEST_SHOWN = 300;

    void print(PrintWriter out) {
        print(out, "Added", plan.changes(DrillChange.Kind.ADDED));
        print(out, "Changed", plan.changes(DrillChange.Kind.CHANGED));
        print(out, "Withdrawn", plan.changes(DrillChange.Kind.WITHDRAWN));
        if (!plan.undecided().isEmpty()) {
            out.println("Changed on both sides (" + plan.undecided().size() + ")");
            for (DrillChange drill : plan.undecided()) {
                out.println("  " + drill.id() + ": " + drill.name());
                for (FieldChange clash : drill.clashes()) {
                    out.println("    " + clash.field());
                    out.println("      mine:   " + shown(clash.old()));
                    out.println("      theirs: " + shown(clash.fresh()));
                }
            }
            out.println();
        }
        problems(out, "Rejected", plan.rejected());
        problems(out, "Worth knowing", plan.notes());
        out.println(plan.changes(DrillChange.Kind.ADDED).size() + " added, "
                + plan.changes(DrillChange.Kind.CHANGED).size() + " changed, "
                + plan.changes(DrillChange.Kind.WITHDRAWN).size() + " withdrawn, "
                + plan.undecided().size() + " undecided, " + plan.rejected().size() + " reasons to reject; "
                + plan.same() + " as they are.");
        out.println(outcome());
    }

    private static void print(PrintWriter out, String title, List<DrillChange> drills) {
        if (drills.isEmpty()) {
            return;
        }
        out.println(title + " (" + drills.size() + ")");
        for (DrillChange drill : drills) {
            out.println("  " + drill.id() + ": " + drill.name());
            for (FieldChange field : drill.fields()) {
                out.println("    " + field.field());
                out.println("      old: " + shown(field.old()));
                out.println("      new: " + shown(field.fresh()));
            }
        }
        out.println();
    }

    private static void problems(PrintWriter out, String title, List<Problem> problems) {
        if (!problems.isEmpty()) {
            out.println(title + " (" + problems.size() + ")");
            problems.forEach(p -> out.println("  " + p.message()));
            out.println();
        }
    }

    private String outcome() {
        if (isApplied) {
            return plan.changes().isEmpty()
                    ? "Nothing to write."
                    : "Written into the clinic's own folder. See “drillsheaf check” for the catalogue as a whole.";
        }
        if (!plan.undecided().isEmpty()) {
            return "Nothing was written. Say --take mine or --take theirs for what both sides changed, or mend the"
                    + " file.";
        }
        if (!plan.rejected().isEmpty()) {
            return "Nothing was written. Mend what is rejected, or leave it out with --apply --skip-rejected.";
        }
        return plan.changes().isEmpty() ? "Nothing to write." : "Nothing was written; --apply writes it.";
    }

    private static String shown(JsonNode value) {
        String text = FieldChange.shown(value).replaceAll("\\p{Cntrl}", " ");
        return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    }

    String json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("applied", isApplied);
        json.put("added", drills(plan.changes(DrillChange.Kind.ADDED)));
        json.put("changed", drills(plan.changes(DrillChange.Kind.CHANGED)));
        json.put("withdrawn", drills(plan.changes(DrillChange.Kind.WITHDRAWN)));
        json.put("undecided", drills(plan.undecided()));
        json.put("rejected", plan.rejected().stream().map(CheckReport::problem).toList());
        json.put("notes", plan.notes().stream().map(CheckReport::problem).toList());
        json.put("as-they-are", plan.same());
        try {
            return MAPPER.writeValueAsString(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of texts and numbers can always be written", e);
        }
    }

    private static List<Map<String, Object>> drills(List<DrillChange> drills) {
        List<Map<String, Object>> all = new ArrayList<>();
        for (DrillChange drill : drills) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("id", drill.id());
            json.put("name", drill.name());
            json.put("revision", drill.result().path("revision"));
            json.put(
                    "fields",
                    drill.fields().stream().map(f -> field(f, "old", "new")).toList());
            json.put(
                    "clashes",
                    drill.clashes().stream()
                            .map(f -> field(f, "mine", "theirs"))
                            .toList());
            all.add(json);
        }
        return all;
    }

    private static Map<String, Object> field(FieldChange change, String before, String after) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("field", change.field());
        json.put(before, change.old().isMissingNode() ? null : change.old());
        json.put(after, change.fresh().isMissingNode() ? null : change.fresh());
        return json;
    }
}
