package org.drillsheaf.program;

import java.util.List;
import java.util.stream.Collectors;
import org.drillsheaf.QuotedText;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.SayingYaml;

/**
 * A program as YAML text. The same program always gives the same bytes; {@link ProgramReader} reads them back. Lines end with a
 * line feed.
 */
public final class ProgramYaml {
    private final StringBuilder out = new StringBuilder();

    private ProgramYaml() {}

    public static String write(Program program) {
        ProgramYaml yaml = new ProgramYaml();
        yaml.program(program);
        return yaml.out.toString();
    }

    private void program(Program program) {
        line(0, "# A program built by Drillsheaf. Change the client's file and build again; do not edit.");
        line(0, "client: " + text(program.client()));
        line(0, "date: " + program.date());
        line(0, "start: " + program.start().id());
        sayings(0, "start-because", program.startReasons());
        line(0, "proof:");
        line(2, "value: " + cost(program.proof().value()));
        line(2, "bound: " + cost(program.proof().bound()));
        line(2, "considered: " + program.proof().considered());
        line(2, "subsets: " + program.proof().subsets());
        line(2, "ruled-out: " + program.proof().ruledOut());
        if (program.proof().stopped()) {
            line(2, "stopped: true");
        }
        line(2, "ties-settled: " + program.proof().tiesSettled());
        line(0, "known: " + list(program.known()));
        line(0, "phases:");
        program.phases().forEach(this::phase);
        line(0, program.changes().isEmpty() ? "changes: []" : "changes:");
        for (ProgramChange change : program.changes()) {
            line(
                    2,
                    "- {phase: " + change.phase().id() + ", kind: "
                            + change.kind().id() + ", drill: " + text(change.drill()) + ", why: "
                            + SayingYaml.write(change.why()) + "}");
        }
        sayings(0, "remarks", program.remarks());
    }

    private void phase(PhasePlan plan) {
        line(2, "- phase: " + plan.phase().id());
        line(4, "standing: " + plan.standing().id());
        line(4, "minutes: " + plan.minutes());
        line(4, "sessions-per-week: " + plan.sessionsPerWeek());
        line(4, plan.goals().isEmpty() ? "goals: []" : "goals:");
        for (CoveredGoal goal : plan.goals()) {
            GoalNeed need = goal.need();
            line(6, "- goal: " + text(need.goal()));
            line(8, "weight: " + need.weight());
            line(8, "target: " + need.target());
            line(8, "covered: " + goal.covered());
            sayings(8, "because", need.reasons());
        }
        line(4, plan.entries().isEmpty() ? "drills: []" : "drills:");
        plan.entries().forEach(this::entry);
        sayings(4, "remarks", plan.remarks());
    }

    private void entry(Entry entry) {
        line(6, "- drill: " + text(entry.drill()));
        line(8, "revision: " + entry.revision());
        line(8, "sha-256: " + text(entry.hash()));
        line(8, "variants: " + list(entry.variants()));
        entry.side().ifPresent(side -> line(8, "side: " + side.id()));
        AssignedDose dose = entry.dose();
        line(
                8,
                "dose: {sets: " + dose.sets() + ", count: " + dose.count() + ", each: " + dose.each()
                        + ", hold-seconds: " + dose.holdSeconds() + ", rest-seconds: " + dose.restSeconds()
                        + ", effort: "
                        + dose.effort() + ", sides: " + dose.sides() + "}");
        line(8, "minutes: " + entry.minutes());
        line(8, "known: " + entry.familiar());
        entry.pinned().ifPresent(pin -> line(8, "pinned: " + pin.id()));
        line(8, entry.serves().isEmpty() ? "serves: []" : "serves:");
        for (Served served : entry.serves()) {
            line(
                    10,
                    "- {goal: " + text(served.goal()) + ", strength: " + served.strength() + ", adds: " + served.adds()
                            + "}");
        }
        sayings(8, "because", entry.reasons());
        line(8, entry.alternatives().isEmpty() ? "alternatives: []" : "alternatives:");
        for (Alternative alternative : entry.alternatives()) {
            line(10, "- {drill: " + text(alternative.drill()) + ", cost: " + cost(alternative.cost()) + "}");
        }
    }

    private static String cost(Cost cost) {
        return "{coverage: " + cost.coverage() + ", minutes: " + cost.minutes() + ", changes: " + cost.changes()
                + ", position-changes: " + cost.positionChanges() + ", repeats: " + cost.repeats() + ", equipment: "
                + cost.equipment() + "}";
    }

    private void sayings(int indent, String key, List<Saying> sayings) {
        line(indent, sayings.isEmpty() ? key + ": []" : key + ":");
        sayings.forEach(s -> line(indent + 2, "- " + SayingYaml.write(s)));
    }

    private void line(int indent, String text) {
        out.append(" ".repeat(indent)).append(text).append('\n');
    }

    private static String list(List<String> texts) {
        return texts.stream().map(ProgramYaml::text).collect(Collectors.joining(", ", "[", "]"));
    }

    /** A plain id stands as it is; everything else is quoted, so that no text can be read as anything but a text. */
    private static String text(String text) {
        if (text.matches("[a-z][a-z0-9]*(-[a-z0-9]+)+")) {
            return text;
        }
        return QuotedText.quoted(text);
    }
}
