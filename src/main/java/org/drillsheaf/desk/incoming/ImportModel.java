package org.drillsheaf.desk.incoming;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.drill.RevisionShelf;
import org.drillsheaf.desk.work.Going;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.library.HouseLayer;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.exchange.DrillChange;
import org.drillsheaf.exchange.HouseFolder;
import org.drillsheaf.exchange.ImportPlan;
import org.drillsheaf.exchange.ImportPlanner;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.IncomingCheck;
import org.drillsheaf.exchange.file.IncomingFile;
import org.drillsheaf.exchange.merge.Take;
import org.drillsheaf.saying.Speech;

/** What a file would do to the catalogue, doing it, and taking it back. Knows no toolkit; blocks. */
public final class ImportModel {
    private final Folders folders;
    private final Optional<RevisionShelf> revisions;
    private final Clock clock;

    public ImportModel(Folders folders, Optional<RevisionShelf> revisions, Clock clock) {
        this.folders = folders;
        this.revisions = revisions;
        this.clock = clock;
    }

    /**
     * What a file would do.
     *
     * @param problems why the file is refused, or single drills of it
     * @param same drills of the file that change nothing
     */
    public record Preview(Path file, List<IncomingChange> changes, List<Problem> problems, int same) {
        public Preview {
            changes = List.copyOf(changes);
            problems = List.copyOf(problems);
        }
    }

    /**
     * What was done, so that it can be taken back.
     *
     * @param before the clinic's file of each drill that was changed; empty where it had none
     */
    public record Done(
            Map<String, Optional<String>> before, Map<String, Optional<String>> after, List<Problem> problems) {}

    /** Reads a file and works out what it would do; writes nothing. */
    public Preview look(Path file, Going going) {
        Problems problems = new Problems();
        Optional<Library> library = LibraryFiles.read(folders.files(), problems);
        Optional<CatalogueReader> catalogue = LibraryFiles.catalogueReader(folders.home(), problems);
        Optional<DrillReader> drills = LibraryFiles.drillReader(folders.home(), problems);
        Optional<Speech> speech = library.flatMap(read -> LibraryFiles.speech(folders.home(), read, problems));
        if (library.isEmpty() || speech.isEmpty() || catalogue.isEmpty() || drills.isEmpty()) {
            return new Preview(file, List.of(), problems.all(), 0);
        }
        Layers now = library.get().layers();
        Problems refused = new Problems();
        Optional<Incoming> incoming = IncomingFile.read(file, now, refused);
        if (incoming.isEmpty() || refused.hasErrors()) {
            return new Preview(file, List.of(), refused.all(), 0);
        }
        IncomingCheck check = new IncomingCheck(
                library.get(), catalogue.get(), drills.get(), LocalDate.now(clock), speech.get(), going::at);
        ImportPlan plan = ImportPlanner.plan(now, incoming.get(), Optional.empty(), check);
        List<IncomingChange> changes = new ArrayList<>();
        plan.changes().forEach(change -> changes.add(new IncomingChange(change, Optional.empty(), false)));
        List<Problem> rejected = new ArrayList<>(plan.rejected());
        if (!plan.undecided().isEmpty()) {
            Set<String> ids = plan.undecided().stream().map(DrillChange::id).collect(Collectors.toSet());
            Incoming open = new Incoming(
                    incoming.get().drills().stream()
                            .filter(d -> ids.contains(d.id()))
                            .toList(),
                    List.of(),
                    List.of());
            ImportPlan theirs = ImportPlanner.plan(now, open, Optional.of(Take.THEIRS), check);
            ImportPlan mine = ImportPlanner.plan(now, open, Optional.of(Take.MINE), check);
            rejected.addAll(theirs.rejected());
            theirs.changes()
                    .forEach(change -> changes.add(new IncomingChange(
                            change,
                            mine.changes().stream()
                                    .filter(m -> m.id().equals(change.id()))
                                    .findFirst(),
                            true)));
        }
        return new Preview(file, changes, rejected, plan.same());
    }

    /** Writes what was chosen: all of it or nothing; every drill gets a version in the record. */
    public Done bringIn(List<DrillChange> chosen) {
        Layers now = LibraryFiles.layers(folders.files(), new Problems());
        Map<String, Optional<String>> before = new LinkedHashMap<>();
        Map<String, Optional<String>> after = new LinkedHashMap<>();
        chosen.forEach(change -> {
            before.put(change.id(), own(now, change.id()));
            after.put(change.id(), change.file());
        });
        List<Problem> problems = new ArrayList<>(house().apply(chosen));
        if (problems.isEmpty()) {
            problems.addAll(keep(before.keySet()));
        }
        return new Done(before, after, problems);
    }

    /**
     * Puts the clinic's files back as they were before. A drill that somebody changed since is left alone.
     *
     * @return what could not be put back
     */
    public List<Problem> takeBack(Done done) {
        Layers now = LibraryFiles.layers(folders.files(), new Problems());
        List<Problem> problems = new ArrayList<>();
        List<DrillChange> back = new ArrayList<>();
        done.before().forEach((id, text) -> {
            if (own(now, id).equals(done.after().get(id))) {
                back.add(new DrillChange(
                        id,
                        DrillChange.Kind.CHANGED,
                        id,
                        List.of(),
                        List.of(),
                        com.fasterxml.jackson.databind.node.MissingNode.getInstance(),
                        text));
            } else {
                problems.add(Problem.error(
                        id,
                        0,
                        "This drill was changed since it came in",
                        "Take it back in its own page, by its versions"));
            }
        });
        problems.addAll(house().apply(back));
        problems.addAll(keep(back.stream().map(DrillChange::id).collect(Collectors.toSet())));
        return problems;
    }

    private static Optional<String> own(Layers now, String id) {
        return Optional.ofNullable(now.drills().get(id))
                .flatMap(HouseLayer.Laid::house)
                .map(now::text);
    }

    private HouseFolder house() {
        return new HouseFolder(folders.files().clinicDrills().orElseThrow());
    }

    private List<Problem> keep(Set<String> ids) {
        List<Problem> problems = new ArrayList<>();
        revisions.ifPresent(shelf -> LibraryFiles.read(folders.files(), new Problems())
                .ifPresent(library -> ids.forEach(id -> library.catalogue()
                        .drill(id)
                        .flatMap(shelf::keep)
                        .ifPresent(wrong -> problems.add(Problem.error(id, 0, wrong, ""))))));
        return problems;
    }
}
