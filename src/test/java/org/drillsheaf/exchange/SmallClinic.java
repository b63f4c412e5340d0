package org.drillsheaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.library.ProjectFiles;
import org.drillsheaf.exchange.merge.Take;

/** A clinic with seven drills of the real catalogue below its own folder. */
public record SmallClinic(Path starter, Path house) {
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 28);
    private static final List<String> DRILLS = List.of(
            "counter-breath",
            "counter-hips-back",
            "sit-hum",
            "sit-straw",
            "sit-arms-sink",
            "forearms-on-thighs",
            "table-head-rest");

    public static SmallClinic in(Path folder) throws IOException {
        SmallClinic clinic = new SmallClinic(folder.resolve("exercise-library"), folder.resolve("house"));
        Files.createDirectories(clinic.starter);
        for (String id : DRILLS) {
            Files.copy(library(id), clinic.starter.resolve(id + ".yaml"));
        }
        return clinic;
    }

    public static Path library(String id) {
        return Path.of("exercise-library", id + ".yaml");
    }

    public String starterText(String id) throws IOException {
        return Files.readString(starter.resolve(id + ".yaml"));
    }

    public Path drills() {
        return house.resolve("exercise-library");
    }

    public void putHouse(String id, String text) throws IOException {
        Files.createDirectories(drills());
        Files.writeString(drills().resolve(id + ".yaml"), text);
    }

    /** A version of a starter drill with one text changed. */
    public void replace(String id, int revision, String old, String fresh) throws IOException {
        String text = starterText(id);
        assertThat(text).contains(old);
        putHouse(
                id,
                text.replace("revision: 1\n", "revision: " + revision + "\nbased-on: 1\n")
                        .replace(old, fresh));
    }

    public void add(String id, String from) throws IOException {
        putHouse(
                id,
                starterText(from)
                        .replaceAll("(?m)^id: .*$", "id: " + id)
                        .replaceAll("(?m)^family: .*$", "family: " + id)
                        .replaceAll("(?m)^(harder|easier): .*\\R", ""));
    }

    public void withdraw(String id) throws IOException {
        putHouse(
                id,
                "id: " + id + "\nwithdrawn: true\nbased-on: 1\nrevision: 1\nauthor: Tamsin Rook\n"
                        + "reviewed-on: 2026-11-20\nreason: We no longer give it.\n");
    }

    public Library library() {
        Problems problems = new Problems();
        Optional<Library> library = LibraryFiles.read(files(), problems);
        assertThat(problems.all()).isEmpty();
        return library.orElseThrow();
    }

    public Layers layers() {
        return library().layers();
    }

    private ProjectFiles files() {
        return new ProjectFiles(Path.of(""), starter, Optional.of(house));
    }

    public ImportPlan plan(Incoming incoming, Optional<Take> take) {
        Problems problems = new Problems();
        Library library = library();
        IncomingCheck check = new IncomingCheck(
                library,
                LibraryFiles.catalogueReader(Path.of(""), problems).orElseThrow(),
                LibraryFiles.drillReader(Path.of(""), problems).orElseThrow(),
                TODAY,
                LibraryFiles.speech(Path.of(""), library, problems).orElseThrow(),
                (done, all) -> {});
        return ImportPlanner.plan(library.layers(), incoming, take, check);
    }

    public List<Problem> apply(ImportPlan plan) {
        return new HouseFolder(drills()).apply(plan.changes());
    }

    /** Every drill as it counts, by id. */
    public Map<String, String> catalogue() {
        return layers().drills().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        d -> d.getValue().node().json().toPrettyString(),
                        (a, b) -> a,
                        TreeMap::new));
    }

    /** Names and texts of everything in the clinic's folder. */
    public Map<String, String> houseFiles() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (var files = Files.walk(house)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(house.relativize(file).toString(), Files.readString(file));
            }
        }
        return texts;
    }
}
