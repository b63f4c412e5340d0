package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/** Reads the safety questions. Immutable and safe for several threads. */
public final class SafetyQuestionReader {
    private final YamlSchema schema;

    public SafetyQuestionReader(YamlSchema schema) {
        this.schema = schema;
    }

    /** The questions in their order; empty when anything is wrong. */
    public Optional<List<SafetyQuestion>> read(YamlNode root, Problems problems) {
        Problems found = new Problems();
        schema.check(root, found);
        List<SafetyQuestion> questions = new ArrayList<>();
        if (!found.hasErrors()) {
            Set<String> ids = new LinkedHashSet<>();
            for (YamlNode node : root.get("questions").map(YamlNode::items).orElse(List.of())) {
                SafetyQuestion question = question(node);
                if (!ids.add(question.id())) {
                    node.error(found, "The question " + question.id() + " stands twice", "Keep one of the two");
                }
                questions.add(question);
            }
        }
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(List.copyOf(questions));
    }

    private static SafetyQuestion question(YamlNode node) {
        return new SafetyQuestion(
                node.text("id").orElseThrow(),
                node.localText("text").orElseThrow(),
                node.text("yes").flatMap(SafetyQuestion.Effect::of).orElseThrow(),
                node.text("urgency").flatMap(SafetyQuestion.Urgency::of).orElseThrow(),
                node.localText("action").orElseThrow(),
                node.localText("concern").orElseThrow(),
                node.get("asked-if").map(SafetyQuestionReader::askedIf).orElse(SafetyQuestion.AskedIf.ALWAYS),
                node.truth("part-and-date").orElse(false),
                node.truth("symptom").orElse(false),
                node.text("suggests"),
                BatteryReader.source(node.get("source").orElseThrow()));
    }

    private static SafetyQuestion.AskedIf askedIf(YamlNode node) {
        return new SafetyQuestion.AskedIf(
                new LinkedHashSet<>(node.texts("conditions")),
                node.integer("up-to-age").map(OptionalInt::of).orElse(OptionalInt.empty()),
                node.integer("from-age").map(OptionalInt::of).orElse(OptionalInt.empty()));
    }
}
