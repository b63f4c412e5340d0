package org.drillsheaf.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.client.KnownIds;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.program.BuilderSettings;
import org.drillsheaf.program.BuilderSettingsReader;
import org.drillsheaf.program.PhaseTable;
import org.drillsheaf.program.PhaseTableReader;
import org.drillsheaf.screen.ReadingRules;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.screen.ScreenFiles;

/**
 * Everything the program knows before it meets a client: the vocabularies, the rules and the catalogue, read from their
 * folders once and passed on.
 */
record Knowledge(
        Library library,
        Safety safety,
        ReadingRules readingRules,
        PhaseTable phases,
        BuilderSettings builderSettings,
        YamlSchema clientSchema) {

    /** Reads it all; ends the command with every mistake that stands in the folders. */
    static Knowledge load(Folders folders) {
        Problems problems = new Problems();
        Optional<Library> library = LibraryFiles.read(folders.home(), problems);
        Optional<DrillReader> drillReader = LibraryFiles.drillReader(folders.home(), problems);
        Optional<ReadingRules> reading = ScreenFiles.read(folders.vocabularies(), Optional.empty(), problems);
        BadInput.stopAtErrors(problems);
        DrillWords words = library.orElseThrow().catalogue().words();
        Optional<PhaseTable> phases = PhaseTableReader.read(
                file(folders, "phases", problems),
                schema(folders, "phases"),
                words.goals().keySet(),
                words.positions().keySet(),
                problems);
        Optional<BuilderSettings> settings = BuilderSettingsReader.read(
                file(folders, "builder", problems),
                schema(folders, "builder"),
                words.goals().keySet(),
                problems);
        BadInput.stopAtErrors(problems);
        Safety safety = new Safety(library.orElseThrow().safetyRules(), drillReader.orElseThrow(), new PoseMeasuring());
        return new Knowledge(
                library.orElseThrow(),
                safety,
                reading.orElseThrow(),
                phases.orElseThrow(),
                settings.orElseThrow(),
                schema(folders, "client"));
    }

    Catalogue catalogue() {
        return library.catalogue();
    }

    SafetyRules safetyRules() {
        return library.safetyRules();
    }

    /** The ids that a client's file may use. */
    KnownIds knownIds() {
        Map<String, Set<String>> conditions = new LinkedHashMap<>();
        safetyRules()
                .conditions()
                .forEach((id, condition) ->
                        conditions.put(id, condition.settings().keySet()));
        DrillWords words = catalogue().words();
        return new KnownIds(
                conditions,
                words.equipment().keySet(),
                words.positions().keySet(),
                words.goals().keySet(),
                readingRules.safetyGate().questions().stream()
                        .map(SafetyQuestion::id)
                        .collect(Collectors.toSet()));
    }

    private static YamlNode file(Folders folders, String name, Problems problems) {
        Path file = folders.vocabularies().resolve(name + ".yaml");
        Optional<YamlNode> node = YamlNode.parse(file.toString(), TextFile.read(file), problems);
        BadInput.stopAtErrors(problems);
        return node.orElseThrow();
    }

    private static YamlSchema schema(Folders folders, String name) {
        return YamlSchema.of(
                TextFile.read(folders.vocabularies().resolve("schemas").resolve(name + ".schema.json")));
    }
}
