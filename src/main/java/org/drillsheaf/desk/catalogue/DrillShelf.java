package org.drillsheaf.desk.catalogue;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.drill.BlockPrinter;
import org.drillsheaf.desk.drill.DrillCheck;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.library.HouseLayer.Laid;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.handout.HandoutFiles;
import org.drillsheaf.handout.HandoutPrinter;
import org.drillsheaf.saying.Speech;

/**
 * The catalogue as it lies on disk at one moment, with what is needed to look at its drills and to print them. Immutable.
 *
 * @param problems what could not be read
 */
public record DrillShelf(Library library, DrillCheck check, BlockPrinter printer, Problems problems) {

    /**
     * Reads everything.
     *
     * @return empty when {@code problems} got an error that leaves nothing to show
     */
    public static Optional<DrillShelf> read(Folders folders, Clock clock, Problems problems) {
        Problems found = new Problems();
        Optional<Library> library = LibraryFiles.read(folders.files(), found);
        Optional<CatalogueReader> reader = LibraryFiles.catalogueReader(folders.home(), problems);
        Optional<DrillReader> drills = LibraryFiles.drillReader(folders.home(), problems);
        Optional<HandoutPrinter> printer =
                HandoutFiles.load(folders.allTemplates(), folders.house(), folders.schema("house"), problems);
        Optional<Speech> speech = library.flatMap(read -> LibraryFiles.speech(folders.home(), read, problems));
        if (library.isEmpty() || speech.isEmpty() || reader.isEmpty() || drills.isEmpty() || printer.isEmpty()) {
            problems.addAll(found.all());
            return Optional.empty();
        }
        Library read = library.get();
        return Optional.of(new DrillShelf(
                read,
                new DrillCheck(
                        read.catalogue(),
                        read.safetyRules(),
                        reader.get(),
                        drills.get(),
                        LocalDate.now(clock),
                        speech.get()),
                new BlockPrinter(printer.get(), read.catalogue().words()),
                found));
    }

    /** The drills as the list shows them. */
    public List<DrillEntry> entries() {
        return library.catalogue().drills().stream()
                .map(d -> DrillEntry.of(d, standing(d), library.catalogue().words()))
                .toList();
    }

    private Standing standing(Drill drill) {
        Laid laid = library.layers().drills().get(drill.id());
        return laid == null ? Standing.ADDED : laid.standing();
    }

    /** Names of the conditions in a language, by id, in the order of their file. */
    public Map<String, String> conditions(String language) {
        Map<String, String> names = new LinkedHashMap<>();
        library.safetyRules()
                .conditions()
                .forEach((id, c) -> names.put(id, c.name().best(List.of(language))));
        return names;
    }
}
