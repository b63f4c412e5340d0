package org.drillsheaf.drill.library;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
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
import org.drillsheaf.saying.SayingFiles;
import org.drillsheaf.saying.Speech;

/** Reads {@code shared/}, {@code exercise-library/} and the clinic's own drills of a project folder. */
public final class LibraryFiles {
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
        return read(ProjectFiles.of(folder), problems);
    }

    /** The same from other folders. */
    public static Optional<Library> read(ProjectFiles files, Problems problems) {
        return new LibraryFiles(files.project(), problems).library(files);
    }

    /** Only the drills, as they lie over each other; drills with mistakes are among them. */
    public static Layers layers(ProjectFiles files, Problems problems) {
        return new LibraryFiles(files.project(), problems).layered(files, name -> true);
    }

    /** One drill as it lies over its starter, without reading the others. */
    public static Optional<HouseLayer.Laid> drill(ProjectFiles files, String id, Problems problems) {
        Layers layers = new LibraryFiles(files.project(), problems).layered(files, (id + ".yaml")::equals);
        return Optional.ofNullable(layers.drills().get(id));
    }

    /** Reader of single drills, for changed versions. */
    public static Optional<DrillReader> drillReader(Path folder, Problems problems) {
        return new LibraryFiles(folder, problems).schema("drill").map(DrillReader::new);
    }

    /** Says in English what there is to say about drills, with the names of the library. */
    public static Optional<Speech> speech(Path folder, Library library, Problems problems) {
        return SayingFiles.read(folder.resolve("shared/sayings"), problems)
                .map(sayings -> sayings.in("en", library::name));
    }

    /** Reader of changed catalogues, with the vocabularies of the project. */
    public static Optional<CatalogueReader> catalogueReader(Path folder, Problems problems) {
        LibraryFiles files = new LibraryFiles(folder, problems);
        return files.safetyRules().flatMap(files::words).flatMap(words -> files.schema("drill")
                .map(schema -> new CatalogueReader(words, schema)));
    }

    private Optional<Library> library(ProjectFiles files) {
        Optional<SafetyRules> safety = safetyRules();
        Optional<YamlSchema> drillSchema = schema("drill");
        Optional<DrillWords> words = safety.flatMap(this::words);
        if (words.isEmpty() || drillSchema.isEmpty()) {
            return Optional.empty();
        }
        List<Caution> cautions = cautions(words.get());
        Layers layers = layered(files, name -> true);
        return cautions.isEmpty()
                ? Optional.empty()
                : Optional.of(new Library(
                        new CatalogueReader(words.get(), drillSchema.get())
                                .catalogue(
                                        layers.drills().values().stream()
                                                .map(HouseLayer.Laid::node)
                                                .toList(),
                                        problems),
                        safety.get(),
                        cautions,
                        layers));
    }

    private Layers layered(ProjectFiles files, Predicate<String> wanted) {
        Map<String, String> starter = DrillFolderFiles.texts(
                files.drills(), String.valueOf(files.drills().getFileName()), wanted, problems);
        Map<String, YamlNode> delivered = CatalogueReader.parse(starter, problems);
        files.clinicDrills().ifPresent(this::stopAtHalfAnImport);
        Optional<Path> clinic = files.clinicDrills().filter(Files::isDirectory);
        Optional<YamlSchema> withdrawal = clinic.flatMap(c -> schema("withdrawal"));
        if (clinic.isEmpty() || withdrawal.isEmpty()) {
            return new Layers(starter, Map.of(), HouseLayer.asDelivered(delivered));
        }
        Path parent = Optional.ofNullable(clinic.get().getParent()).orElse(clinic.get());
        String shown = parent.getFileName() + "/" + clinic.get().getFileName();
        Map<String, String> house = DrillFolderFiles.texts(clinic.get(), shown, wanted, problems);
        return new Layers(
                starter,
                house,
                HouseLayer.lay(delivered, CatalogueReader.parse(house, problems), withdrawal.get(), problems));
    }

    /** Without the clinic's drills a withdrawn drill would be given again, so that must not go unnoticed. */
    private void stopAtHalfAnImport(Path clinicDrills) {
        String before = ProjectFiles.nameBefore(clinicDrills);
        if (!Files.exists(clinicDrills) && Files.isDirectory(clinicDrills.resolveSibling(before))) {
            problems.error(
                    clinicDrills.toString(),
                    0,
                    "An import was cut off between two steps, so the clinic's drills lie in “" + before
                            + "” beside this",
                    "Rename that folder to “" + clinicDrills.getFileName() + "”, and import again");
        }
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
        Problems own = new Problems();
        LibraryFiles vocabularies = new LibraryFiles(folder, own);
        DrillWords words = new DrillWords(
                vocabularies.vocabulary("goals", WordsReader::goals),
                vocabularies.vocabulary("positions", WordsReader::positions),
                vocabularies.vocabulary("equipment", WordsReader::equipment),
                safety.conditions().keySet(),
                safety.kinds().keySet());
        problems.addAll(own.all());
        return own.isEmpty() ? Optional.of(words) : Optional.empty();
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

    private Optional<YamlNode> yaml(String name) {
        String path = "shared/" + name + ".yaml";
        return text(folder.resolve(path), path).flatMap(text -> YamlNode.parse(path, text, problems));
    }

    private Optional<YamlSchema> schema(String name) {
        String path = "shared/schemas/" + name + ".schema.json";
        return text(folder.resolve(path), path).map(YamlSchema::of);
    }

    private Optional<String> text(Path file, String name) {
        return DrillFolderFiles.text(file, name, problems);
    }
}
