package org.drillsheaf.drill.library;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.WordsReader;
import org.drillsheaf.drill.safety.Caution;
import org.drillsheaf.drill.safety.CautionReader;
import org.drillsheaf.drill.safety.ConditionReader;
import org.drillsheaf.drill.safety.SafetyRules;

/** Reads {@code shared/} and {@code exercise-library/} of a project folder. */
public final class LibraryFiles {
    private static final String DRILLS = "exercise-library";

    private final Path folder;
    private final Problems problems;

    private LibraryFiles(Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /**
     * Reads everything.
     *
     * @param folder the project folder
     * @return empty when the safety rules or vocabularies cannot be read; drills with errors are left out and told
     */
    public static Optional<Library> read(Path folder, Problems problems) {
        return read(folder, folder.resolve(DRILLS), problems);
    }

    /** The same with the drills of another folder. */
    public static Optional<Library> read(Path folder, Path drills, Problems problems) {
        return new LibraryFiles(folder, problems).library(drills);
    }

    /** Reader of single drills, for changed versions. */
    public static Optional<DrillReader> drillReader(Path folder, Problems problems) {
        return new LibraryFiles(folder, problems).schema("drill").map(DrillReader::new);
    }

    private Optional<Library> library(Path drills) {
        Optional<SafetyRules> safety = safetyRules();
        Optional<YamlSchema> drillSchema = schema("drill");
        Optional<DrillWords> words = safety.flatMap(this::words);
        if (words.isEmpty() || drillSchema.isEmpty()) {
            return Optional.empty();
        }
        List<Caution> cautions = cautions(words.get());
        Map<String, String> texts = drillTexts(drills);
        return cautions.isEmpty()
                ? Optional.empty()
                : Optional.of(new Library(
                        new CatalogueReader(words.get(), drillSchema.get()).read(texts, problems),
                        safety.get(),
                        cautions));
    }

    private List<Caution> cautions(DrillWords words) {
        Optional<YamlNode> file = yaml("cautions");
        Optional<YamlSchema> schema = schema("cautions");
        return file.isEmpty() || schema.isEmpty()
                ? List.of()
                : CautionReader.read(
                        file.get(), schema.get(), words.equipment().keySet(), words.conditions(), problems);
    }

    private Optional<SafetyRules> safetyRules() {
        Optional<YamlNode> file = yaml("conditions");
        Optional<YamlSchema> schema = schema("conditions");
        return file.isEmpty() || schema.isEmpty()
                ? Optional.empty()
                : ConditionReader.read(file.get(), schema.get(), problems);
    }

    private Optional<DrillWords> words(SafetyRules safety) {
        int before = problems.all().size();
        DrillWords words = new DrillWords(
                vocabulary("goals", WordsReader::goals),
                vocabulary("positions", WordsReader::positions),
                vocabulary("equipment", WordsReader::equipment),
                safety.conditions().keySet(),
                safety.kinds().keySet());
        return problems.all().size() > before ? Optional.empty() : Optional.of(words);
    }

    /** How one vocabulary is read from its file and schema. */
    private interface Vocabulary<T> {
        Map<String, T> read(YamlNode file, YamlSchema schema, Problems problems);
    }

    private <T> Map<String, T> vocabulary(String name, Vocabulary<T> reader) {
        Optional<YamlNode> file = yaml(name);
        Optional<YamlSchema> schema = schema(name);
        return file.isEmpty() || schema.isEmpty() ? Map.of() : reader.read(file.get(), schema.get(), problems);
    }

    private Map<String, String> drillTexts(Path drills) {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : filesIn(drills)) {
            String name = drills.getFileName() + "/" + file.getFileName();
            text(file, name).ifPresent(text -> texts.put(name, text));
        }
        return texts;
    }

    private List<Path> filesIn(Path drills) {
        try (Stream<Path> files = Files.list(drills)) {
            return files.filter(f -> f.getFileName().toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            problems.error(
                    drills.toString(), 0, "The folder of drills cannot be read", "Check that it is there and readable");
            return List.of();
        }
    }

    private Optional<YamlNode> yaml(String name) {
        String path = "shared/" + name + ".yaml";
        return text(folder.resolve(path), path).flatMap(text -> YamlNode.parse(path, text, problems));
    }

    private Optional<YamlSchema> schema(String name) {
        String path = "shared/schemas/" + name + ".schema.json";
        return text(folder.resolve(path), path).map(YamlSchema::of);
    }

    private Optional<String> text(Path file, String name) {
        try {
            if (Files.size(file) > YamlNode.LARGEST_FILE) {
                problems.error(name, 0, "The file is too large", "Keep it under " + YamlNode.LARGEST_FILE + " bytes");
                return Optional.empty();
            }
            return Optional.of(Files.readString(file));
        } catch (NoSuchFileException e) {
            problems.error(name, 0, "The file is not there", "Put it back, or start in the project folder");
        } catch (CharacterCodingException e) {
            problems.error(name, 0, "The file is not UTF-8 text", "Save it again as UTF-8");
        } catch (IOException e) {
            problems.error(name, 0, "The file cannot be read", "Check that you may read it");
        }
        return Optional.empty();
    }
}
