package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import org.drillsheaf.program.Alternative;
import org.drillsheaf.program.AssignedDose;
import org.drillsheaf.program.BuildResult;
import org.drillsheaf.program.ClashSet;
import org.drillsheaf.program.CoveredGoal;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.InPersonOnly;
import org.drillsheaf.program.PhaseNeeds;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramChange;
import org.drillsheaf.program.Undecided;
import org.drillsheaf.program.Waits;
import org.drillsheaf.program.Without;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Speech;

/** A program on the terminal: goals, phases, drills, doses, minutes and one line why. */
final class ProgramText {
    private final PrintWriter out;
    private final Speech speech;
    private final boolean explain;

    ProgramText(PrintWriter out, Speech speech, boolean explain) {
        this.out = out;
        this.speech = speech;
        this.explain = explain;
    }

    void goals(List<PhaseNeeds> phases) {
        out.println();
        out.println("Goals by phase (weight, target)");
        for (PhaseNeeds phase : phases) {
            String line = phase.goals().stream()
                    .filter(g -> g.weight() > 0 && (explain || g.weight() >= 3))
                    .sorted((a, b) -> b.weight() - a.weight())
                    .map(g -> goal(g.goal()) + " " + g.weight() + "/" + g.target())
                    .collect(Collectors.joining(", "));
            out.println("  " + phase.phase().title() + ": " + line);
            if (explain) {
                phase.goals().stream()
                        .filter(g -> g.reasons().size() > 1)
                        .forEach(g -> out.println("      " + goal(g.goal()) + ": " + semicolons(g.reasons())));
            }
        }
    }

    void print(Program program) {
        out.println();
        out.println(
                "Program: begins with " + program.start().title() + ": " + semicolons(program.startReasons()) + ".");
        for (PhasePlan phase : program.phases()) {
            phase(phase);
        }
        for (ProgramChange change : program.changes()) {
            out.println(
                    "  " + change.phase().title() + ", " + change.kind().id().replace('-', ' ') + ": "
                            + drill(change.drill()) + " (" + speech.say(change.why()) + ")");
        }
        program.remarks().forEach(this::line);
        out.println(speech.say(program.proof().words()));
    }

    void answers(ProgramQuestions.Answers answers) {
        for (ProgramQuestions.AboutDrill about : answers.drills()) {
            out.println();
            String name = drill(about.whyNot().drill());
            if (about.without().isPresent()) {
                Without without = about.without().get();
                out.println(name + " is in. Without it: " + speech.say(without.words()) + ".");
            } else {
                out.println("Why not " + name);
                about.whyNot().reasons().forEach(this::line);
                about.whyNot().phases().forEach(phase -> out.println("  in " + speech.say(phase.words())));
            }
        }
        if (!answers.whatIf().isEmpty()) {
            out.println();
            out.println("What if");
            answers.whatIf().forEach(change -> line(change.words()));
        }
    }

    private void phase(PhasePlan plan) {
        out.println();
        if (plan.entries().isEmpty()) {
            out.println(plan.phase().title() + ": " + plan.standing().id().replace('-', ' '));
            return;
        }
        out.println(plan.phase().title() + ": " + plan.minutes() + " minutes, " + plan.sessionsPerWeek()
                + " sessions a week, covers " + covered(plan.goals()));
        int number = 1;
        for (Entry entry : plan.entries()) {
            out.println("  " + number++ + " " + drill(entry.drill()) + " · " + dose(entry.dose()) + " · "
                    + entry.minutes() + " min" + (entry.familiar() ? " · known" : "")
                    + (entry.variants().isEmpty() ? "" : " · changed: " + String.join(", ", entry.variants()))
                    + entry.side().map(s -> " · begins " + s.id()).orElse(""));
            entry.reasons().stream()
                    .limit(explain ? 99 : 1)
                    .forEach(reason -> out.println("      " + speech.say(reason)));
            if (explain) {
                for (Alternative alternative : entry.alternatives()) {
                    out.println("      or " + drill(alternative.drill()) + ": " + speech.say(alternative.words()));
                }
            }
        }
        plan.remarks().forEach(this::line);
    }

    private String covered(List<CoveredGoal> all) {
        List<CoveredGoal> asked =
                all.stream().filter(g -> g.need().asksForSomething()).toList();
        String missing = asked.stream()
                .filter(g -> g.missing() > 0)
                .map(g -> goal(g.need().goal()).toLowerCase(java.util.Locale.ROOT) + " " + g.covered() + " of "
                        + g.need().target())
                .collect(Collectors.joining(", "));
        long full = asked.stream().filter(g -> g.missing() == 0).count();
        return full + " of " + asked.size() + " goals" + (missing.isEmpty() ? "" : "; short of: " + missing);
    }

    /** Says why there is no program. */
    void printRefusal(BuildResult result) {
        out.println();
        if (result instanceof ClashSet clash) {
            out.println("No program fits. " + speech.say(clash.words()));
            clash.members()
                    .forEach(member ->
                            out.println("  " + speech.say(member.remedy()) + ": " + speech.say(member.then())));
        } else if (result instanceof InPersonOnly inPerson) {
            out.println("No program for home; in person only.");
            inPerson.reasons().forEach(this::line);
        } else if (result instanceof Undecided undecided) {
            out.println("No program found. " + speech.say(undecided.words()));
        } else if (result instanceof Waits waits) {
            out.println("The program waits.");
            waits.reasons().forEach(this::line);
        }
    }

    private String dose(AssignedDose dose) {
        String each = dose.each() + " " + counted(dose);
        String sides =
                dose.sides().equals("both-together") ? "" : ", " + dose.sides().replace('-', ' ');
        return (dose.count().equals("minutes") && dose.sets() == 1 ? each : dose.sets() + " × " + each) + sides
                + ", effort " + dose.effort();
    }

    /** What is counted, for example {@code breaths}, is an English plural in the drills too. */
    private static String counted(AssignedDose dose) {
        return dose.each() == 1 ? dose.count().replaceFirst("s$", "") : dose.count();
    }

    private String drill(String id) {
        return speech.say(Saying.name(Saying.Name.Kind.DRILL, id));
    }

    private String goal(String id) {
        return speech.say(Saying.name(Saying.Name.Kind.GOAL, id));
    }

    private String semicolons(List<Saying> sayings) {
        return speech.say(Saying.joined(Saying.Joint.SEMICOLON, sayings));
    }

    private void line(Saying saying) {
        out.println("  " + speech.say(saying));
    }
}
