package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.client.Answer;
import org.drillsheaf.client.Born;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Paper;
import org.drillsheaf.client.Print;
import org.drillsheaf.client.SafetyAnswer;
import org.drillsheaf.client.Sex;

/** The project's own vocabularies and a client, for the tests of this package. */
final class House {
    static final Path SHARED = Path.of("shared");
    static final ReadingRules RULES = rules();

    private House() {}

    private static ReadingRules rules() {
        Problems problems = new Problems();
        Optional<ReadingRules> rules = ScreenFiles.read(SHARED, Optional.empty(), problems);
        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        return rules.orElseThrow();
    }

    static YamlSchema schema(String name) {
        return YamlSchema.of(text(SHARED.resolve("schemas/" + name + ".schema.json")));
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static YamlNode yaml(String text) {
        Problems problems = new Problems();
        Optional<YamlNode> node = YamlNode.parse("test.yaml", text, problems);
        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        return node.orElseThrow();
    }

    static MovementTest test(String id) {
        return RULES.battery().test(id).orElseThrow();
    }

    static Client client(Optional<Sex> sex, int born) {
        return new Client(
                "somebody",
                "Somebody",
                "Somebody",
                Born.in(born),
                sex,
                170,
                OptionalDouble.empty(),
                List.of("en"),
                Paper.A4,
                Print.STANDARD,
                "Tamsin Rook",
                Set.of("wall"),
                new LinkedHashSet<>(),
                20,
                5,
                Optional.empty());
    }

    /** No to every question. */
    static Map<String, SafetyAnswer> allNo() {
        return RULES.safetyGate().questions().stream()
                .collect(Collectors.toMap(SafetyQuestion::id, q -> SafetyAnswer.of(Answer.NO)));
    }
}
