package org.drillsheaf.cli;

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
record Knowledge(Vocabulary vocabulary, Safety safety, YamlSchema clientSchema) {

    /** Reads it all; ends the command with every mistake that stands in the folders. */
    static Knowledge load(Folders folders) {
        Problems problems = new Problems();
        Optional<Vocabulary> vocabulary = VocabularyReader.read(folders.home(), problems);
        Optional<DrillReader> drillReader = LibraryFiles.drillReader(folders.home(), problems);
        BadInput.stopAtErrors(problems);
        Safety safety = new Safety(
                vocabulary.orElseThrow().library().safetyRules(), drillReader.orElseThrow(), new PoseMeasuring());
        YamlSchema clientSchema = YamlSchema.of(TextFile.read(folders.schema("client")));
        return new Knowledge(vocabulary.orElseThrow(), safety, clientSchema);
    }

    Catalogue catalogue() {
        return vocabulary.library().catalogue();
    }

    SafetyRules safetyRules() {
        return vocabulary.library().safetyRules();
    }

    NeedsMaker needsMaker() {
        return new NeedsMaker(vocabulary.phases(), vocabulary.builder());
    }

    Builder builder() {
        return new Builder(catalogue(), safety, vocabulary.phases(), vocabulary.builder());
    }

    /** The ids that a client's file may use. */
    KnownIds knownIds() {
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
