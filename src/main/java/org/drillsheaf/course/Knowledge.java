package org.drillsheaf.course;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.client.KnownIds;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.program.Builder;
import org.drillsheaf.program.NeedsMaker;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.program.VocabularyReader;
import org.drillsheaf.screen.SafetyQuestion;

/** Everything the program knows before it meets a client, read from its folders once and passed on. */
public record Knowledge(Vocabulary vocabulary, Safety safety, YamlSchema clientSchema) {

    /** Reads it all; empty when {@code problems} got an error. */
    public static Optional<Knowledge> read(Folders folders, Problems problems) {
        Problems found = new Problems();
        Optional<Vocabulary> vocabulary = VocabularyReader.read(folders.files(), found);
        Optional<DrillReader> drillReader = LibraryFiles.drillReader(folders.home(), found);
        Optional<YamlSchema> clientSchema = clientSchema(folders, found);
        problems.addAll(found.all());
        if (found.hasErrors() || vocabulary.isEmpty() || drillReader.isEmpty() || clientSchema.isEmpty()) {
            return Optional.empty();
        }
        Safety safety = new Safety(vocabulary.get().library().safetyRules(), drillReader.get(), new PoseMeasuring());
        return Optional.of(new Knowledge(vocabulary.get(), safety, clientSchema.get()));
    }

    private static Optional<YamlSchema> clientSchema(Folders folders, Problems problems) {
        Path file = folders.schema("client");
        try {
            return Optional.of(YamlSchema.of(Files.readString(file)));
        } catch (IOException e) {
            problems.error(file.toString(), 0, "The file cannot be read", "Put the folder shared back as it was");
            return Optional.empty();
        }
    }

    public Catalogue catalogue() {
        return vocabulary.library().catalogue();
    }

    public SafetyRules safetyRules() {
        return vocabulary.library().safetyRules();
    }

    public NeedsMaker needsMaker() {
        return new NeedsMaker(vocabulary.phases(), vocabulary.builder());
    }

    public Builder builder() {
        return new Builder(catalogue(), safety, vocabulary.phases(), vocabulary.builder());
    }

    /** The ids that a client's file may use. */
    public KnownIds knownIds() {
        Map<String, Set<String>> conditions = new LinkedHashMap<>();
        safetyRules()
                .conditions()
                .forEach((id, condition) ->
                        conditions.put(id, condition.settings().keySet()));
        DrillWords words = catalogue().words();
        Set<String> things = new LinkedHashSet<>(words.equipment().keySet());
        words.equipment().values().forEach(item -> item.standIns().forEach(standIn -> things.add(standIn.id())));
        return new KnownIds(
                conditions,
                things,
                words.positions().keySet(),
                words.goals().keySet(),
                vocabulary.reading().safetyGate().questions().stream()
                        .map(SafetyQuestion::id)
                        .collect(Collectors.toSet()));
    }
}
