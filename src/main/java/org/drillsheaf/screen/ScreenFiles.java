package org.drillsheaf.screen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/** Reads tests, safety questions and presentations from the project's folder. */
public final class ScreenFiles {
    private static final String SCHEMAS = "schemas";

    private ScreenFiles() {}

    /**
     * Reads everything a reading needs.
     *
     * @param shared the folder of the vocabularies
     * @param ofTheClinic a clinic's own tests, over ours
     */
    public static Optional<ReadingRules> read(Path shared, Optional<Path> ofTheClinic, Problems problems) {
        Optional<Battery> battery = battery(shared, ofTheClinic, problems);
        Optional<List<SafetyQuestion>> questions = yaml(shared.resolve("red-flags.yaml"), problems)
                .flatMap(node -> schema(shared, "red-flags", problems)
                        .flatMap(schema -> new SafetyQuestionReader(schema).read(node, problems)));
        Optional<Presentations> presentations =
                battery.flatMap(b -> yaml(shared.resolve("presentations.yaml"), problems)
                        .flatMap(node -> schema(shared, "presentations", problems)
                                .flatMap(schema -> new PresentationReader(schema, b).read(node, problems))));
        if (battery.isEmpty() || questions.isEmpty() || presentations.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ReadingRules(battery.get(), presentations.get(), new SafetyGate(questions.get())));
    }

    /** Reads the gates between the phases. */
    public static Optional<List<Gate>> gates(Path shared, ReadingRules rules, Problems problems) {
        return yaml(shared.resolve("gates.yaml"), problems).flatMap(node -> schema(shared, "gates", problems)
                .flatMap(schema ->
                        new GateReader(rules.battery(), rules.presentations()).readAll(node, schema, problems)));
    }

    private static Optional<Battery> battery(Path shared, Optional<Path> ofTheClinic, Problems problems) {
        Optional<YamlSchema> schema = schema(shared, "tests", problems);
        Optional<YamlNode> ours = yaml(shared.resolve("tests.yaml"), problems);
        if (schema.isEmpty() || ours.isEmpty()) {
            return Optional.empty();
        }
        BatteryReader reader = new BatteryReader(schema.get());
        if (ofTheClinic.isEmpty()) {
            return reader.read(ours.get(), problems);
        }
        return yaml(ofTheClinic.get(), problems).flatMap(own -> reader.read(ours.get(), own, problems));
    }

    private static Optional<YamlSchema> schema(Path shared, String name, Problems problems) {
        return text(shared.resolve(SCHEMAS).resolve(name + ".schema.json"), problems)
                .map(YamlSchema::of);
    }

    private static Optional<YamlNode> yaml(Path file, Problems problems) {
        return text(file, problems).flatMap(text -> YamlNode.parse(file.toString(), text, problems));
    }

    private static Optional<String> text(Path file, Problems problems) {
        try {
            return Optional.of(Files.readString(file));
        } catch (IOException e) {
            problems.error(file.toString(), 0, "The file cannot be read", "Check that it is there and may be read");
            return Optional.empty();
        }
    }
}
