package org.drillsheaf.drill.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.Keyframe;
import org.drillsheaf.drill.Step;
import org.drillsheaf.drill.Variant;
import org.drillsheaf.drill.safety.ActiveCondition;
import org.drillsheaf.drill.safety.Condition;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.saying.Speech;

/** Looks at the poses: can they be read and solved, do marks and steps fit, do tags and rules agree. */
record PoseCheck(DrillReader reader, SafetyRules rules, Safety safety, LocalDate today, Speech speech) {
    /** Long enough ago that no waiting time of a condition is left. */
    private static final int WEEKS_AGO = 30;

    List<Problem> check(Drill drill) {
        List<Problem> problems = new ArrayList<>(poses(drill));
        variants(drill, new HashSet<>(problems), problems);
        marks(drill, problems);
        for (Condition condition : rules.conditions().values()) {
            difference(drill, condition, problems);
        }
        return problems;
    }

    private static List<Problem> poses(Drill drill) {
        Problems problems = new Problems();
        PoseSheetReader.read(drill.pose(), problems)
                .ifPresent(sheet -> problems.addAll(sheet.solve().problems()));
        return problems.all();
    }

    private void variants(Drill drill, Set<Problem> told, List<Problem> problems) {
        for (Variant variant : drill.variants()) {
            Problems own = new Problems();
            Optional<Drill> changed = reader.withVariants(drill, List.of(variant), own);
            changed.ifPresent(d -> own.addAll(poses(d)));
            for (Problem problem : own.all()) {
                if (told.add(problem)) {
                    problems.add(new Problem(
                            problem.severity(),
                            problem.file(),
                            problem.line(),
                            "Variant “" + variant.id() + "”: " + problem.what(),
                            problem.remedy()));
                }
            }
        }
    }

    /** Every arrow belongs to a step, and the movement is shown by at least one. */
    private static void marks(Drill drill, List<Problem> problems) {
        Set<String> named = new HashSet<>();
        drill.setUpSteps().forEach(s -> s.mark().ifPresent(named::add));
        drill.actionSteps().forEach(s -> s.mark().ifPresent(named::add));
        for (Keyframe keyframe : Keyframe.values()) {
            for (YamlNode mark : drill.pose()
                    .get(keyframe.id())
                    .flatMap(k -> k.get("marks"))
                    .map(YamlNode::items)
                    .orElse(List.of())) {
                boolean arrow = mark.has("arrow") || mark.has("swing");
                String id = mark.text("id").orElse("");
                if (arrow && !named.contains(id)) {
                    problems.add(Problem.warning(
                            mark.file(),
                            mark.line(),
                            "No step tells what the arrow “" + id + "” shows",
                            "Name it as the mark of a step, or take it away"));
                }
            }
        }
        if (drill.actionSteps().stream().map(Step::mark).allMatch(Optional::isEmpty)) {
            problems.add(Problem.advice(
                    drill.written().file(),
                    drill.written().nearest("/action").line(),
                    "No action step has a mark in the picture",
                    "Show the main movement with an arrow and name it in the step"));
        }
    }

    private void difference(Drill drill, Condition condition, List<Problem> problems) {
        Optional<ActiveCondition> active = new UsualClient(rules, today)
                .with(condition, WEEKS_AGO, Set.of()).active().stream()
                        .filter(a -> a.id().equals(condition.id()))
                        .findFirst();
        active.map(a -> safety.compare(drill, a)).ifPresent(difference -> {
            Action computed = difference.computed();
            Action tagged = difference.tagged();
            // A smaller dose or a printed sentence needs nothing from the author.
            boolean byItself = computed == Action.MODIFY && !difference.needsVariant();
            if (computed.compareTo(tagged) > 0 && computed.compareTo(Action.CAUTION) > 0 && !byItself) {
                String why = difference.reasons().stream()
                        .findFirst()
                        .map(r -> speech.say(r.words()))
                        .orElse("");
                problems.add(Problem.warning(
                        drill.written().file(),
                        tagLine(drill, condition.id()),
                        "For " + condition.id() + " the rules say " + computed.id() + " and the tag says " + tagged.id()
                                + " (" + why + ")",
                        "The stricter counts; correct the tag, the pose or the dose, or add a variant"));
            } else if (tagged.compareTo(computed) > 0 && tagged == Action.EXCLUDE) {
                problems.add(Problem.advice(
                        drill.written().file(),
                        tagLine(drill, condition.id()),
                        "For " + condition.id() + " the tag says exclude and the rules say " + computed.id(),
                        "The stricter counts; take the tag away if nothing but a number stood behind it"));
            }
        });
    }

    private static int tagLine(Drill drill, String condition) {
        return drill.conditions().stream()
                .filter(t -> t.condition().equals(condition))
                .map(t -> t.line())
                .findFirst()
                .orElse(drill.written().line());
    }
}
