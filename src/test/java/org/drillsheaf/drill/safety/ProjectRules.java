package org.drillsheaf.drill.safety;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.SayingFiles;
import org.drillsheaf.saying.Speech;

/** The project's own conditions file, read once for the tests. */
public final class ProjectRules {
    public static final SafetyRules RULES = read();

    /** Words reasons of the rules in English. */
    public static final Speech SPEECH = speech();

    private ProjectRules() {}

    private static Speech speech() {
        Problems problems = new Problems();
        return SayingFiles.read(Path.of("shared/sayings"), problems)
                .orElseThrow(() -> new AssertionError(problems.all()))
                .in(
                        "en",
                        (kind, id) -> kind == Saying.Name.Kind.CONDITION
                                ? RULES.condition(id).map(Condition::name)
                                : Optional.empty());
    }

    private static SafetyRules read() {
        try {
            Problems problems = new Problems();
            String path = "shared/conditions.yaml";
            YamlSchema schema = YamlSchema.of(Files.readString(Path.of("shared/schemas/conditions.schema.json")));
            SafetyRules rules = YamlNode.parse(path, Files.readString(Path.of(path)), problems)
                    .flatMap(node -> ConditionReader.read(node, schema, problems))
                    .orElseThrow(() -> new AssertionError(problems.all().stream()
                            .map(org.drillsheaf.Problem::message)
                            .toList()
                            .toString()));
            if (!problems.isEmpty()) {
                throw new AssertionError(problems.all().toString());
            }
            return rules;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
