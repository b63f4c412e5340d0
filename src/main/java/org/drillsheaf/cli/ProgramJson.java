package org.drillsheaf.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillsheaf.Side;
import org.drillsheaf.program.Alternative;
import org.drillsheaf.program.AssignedDose;
import org.drillsheaf.program.BuildResult;
import org.drillsheaf.program.ClashSet;
import org.drillsheaf.program.Cost;
import org.drillsheaf.program.CoveredGoal;
import org.drillsheaf.program.Difference;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.InPersonOnly;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Pin;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramChange;
import org.drillsheaf.program.Proof;
import org.drillsheaf.program.Undecided;
import org.drillsheaf.program.Waits;
import org.drillsheaf.program.WhatIf;
import org.drillsheaf.program.WhyNot;
import org.drillsheaf.saying.Saying;

/** A program, or why there is none, for machines. Keys are those of the program's own file. */
final class ProgramJson {
    private ProgramJson() {}

    static Map<String, Object> of(Program program) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("date", program.date().toString());
        json.put("start", program.start().id());
        json.put("start-because", program.startReasons());
        json.put("proof", proof(program.proof()));
        json.put("phases", program.phases().stream().map(ProgramJson::phase).toList());
        json.put("changes", program.changes().stream().map(ProgramJson::change).toList());
        json.put("remarks", program.remarks());
        return json;
    }

    static Map<String, Object> refusal(BuildResult result) {
        Map<String, Object> json = new LinkedHashMap<>();
        if (result instanceof ClashSet clash) {
            json.put("kind", "clash");
            json.put("words", clash.words());
            json.put("smallest", clash.smallest());
            json.put(
                    "members",
                    clash.members().stream()
                            .map(m -> Map.of("who", m.who(), "what", m.what(), "remedy", m.remedy(), "then", m.then()))
                            .toList());
        } else if (result instanceof InPersonOnly inPerson) {
            json.put("kind", "in-person-only");
            json.put("reasons", inPerson.reasons());
        } else if (result instanceof Waits waits) {
            json.put("kind", "waits");
            json.put("reasons", waits.reasons());
        } else if (result instanceof Undecided undecided) {
            json.put("kind", "undecided");
            json.put("words", undecided.words());
        }
        return json;
    }

    static List<Object> whyNot(ProgramQuestions.Answers answers) {
        return answers.drills().stream().map(ProgramJson::about).toList();
    }

    static List<Object> whatIf(ProgramQuestions.Answers answers) {
        return answers.whatIf().stream().map(ProgramJson::change).toList();
    }

    private static Object about(ProgramQuestions.AboutDrill about) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("drill", about.whyNot().drill());
        json.put("is-in", about.isIn());
        about.without().ifPresent(without -> json.put("without-it", difference(without.difference(), without.words())));
        json.put("reasons", about.whyNot().reasons());
        json.put(
                "phases",
                about.whyNot().phases().stream().map(ProgramJson::inPhase).toList());
        return json;
    }

    private static Map<String, Object> inPhase(WhyNot.InPhase phase) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("phase", phase.phase().id());
        json.putAll(difference(phase.difference(), phase.words()));
        return json;
    }

    private static Map<String, Object> difference(Difference difference, Saying words) {
        Map<String, Object> json = new LinkedHashMap<>();
        difference.cost().ifPresent(cost -> json.put("cost", cost(cost)));
        json.put("decided", difference.decided());
        json.put("words", words);
        return json;
    }

    private static Object change(WhatIf change) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("change", change.change());
        json.put("gains", change.gains());
        json.putAll(difference(change.difference(), change.words()));
        return json;
    }

    private static Map<String, Object> proof(Proof proof) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("best", proof.best());
        json.put("value", cost(proof.value()));
        json.put("bound", cost(proof.bound()));
        json.put("considered", proof.considered());
        json.put("subsets", proof.subsets());
        json.put("ruled-out", proof.ruledOut());
        json.put("stopped", proof.stopped());
        json.put("ties-settled", proof.tiesSettled());
        json.put("words", proof.words());
        return json;
    }

    private static Map<String, Object> phase(PhasePlan plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("phase", plan.phase().id());
        json.put("standing", plan.standing().id());
        json.put("minutes", plan.minutes());
        json.put("sessions-per-week", plan.sessionsPerWeek());
        json.put("goals", plan.goals().stream().map(ProgramJson::goal).toList());
        json.put("drills", plan.entries().stream().map(ProgramJson::entry).toList());
        json.put("remarks", plan.remarks());
        return json;
    }

    private static Map<String, Object> goal(CoveredGoal goal) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("goal", goal.need().goal());
        json.put("weight", goal.need().weight());
        json.put("target", goal.need().target());
        json.put("covered", goal.covered());
        return json;
    }

    private static Map<String, Object> entry(Entry entry) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("drill", entry.drill());
        json.put("variants", entry.variants());
        entry.side().map(Side::id).ifPresent(side -> json.put("side", side));
        json.put("dose", dose(entry.dose()));
        json.put("minutes", entry.minutes());
        json.put("known", entry.familiar());
        entry.pinned().map(Pin.Kind::id).ifPresent(pin -> json.put("pinned", pin));
        json.put("because", entry.reasons());
        json.put(
                "alternatives",
                entry.alternatives().stream().map(ProgramJson::alternative).toList());
        return json;
    }

    private static Map<String, Object> dose(AssignedDose dose) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("sets", dose.sets());
        json.put("count", dose.count());
        json.put("each", dose.each());
        json.put("hold-seconds", dose.holdSeconds());
        json.put("rest-seconds", dose.restSeconds());
        json.put("effort", dose.effort());
        json.put("sides", dose.sides());
        return json;
    }

    private static Map<String, Object> alternative(Alternative alternative) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("drill", alternative.drill());
        json.put("cost", cost(alternative.cost()));
        json.put("words", alternative.words());
        return json;
    }

    private static Map<String, Object> change(ProgramChange change) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("phase", change.phase().id());
        json.put("kind", change.kind().id());
        json.put("drill", change.drill());
        json.put("why", change.why());
        return json;
    }

    private static Map<String, Object> cost(Cost cost) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("coverage", cost.coverage());
        json.put("minutes", cost.minutes());
        json.put("changes", cost.changes());
        json.put("position-changes", cost.positionChanges());
        json.put("repeats", cost.repeats());
        json.put("equipment", cost.equipment());
        return json;
    }
}
