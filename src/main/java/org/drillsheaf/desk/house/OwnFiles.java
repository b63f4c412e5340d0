package org.drillsheaf.desk.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.StyleText;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;

/** Tests, phases and templates that a clinic lays over ours, each a file of its own folder. Blocks. */
final class OwnFiles {
    private static final List<DocumentKind> OF_A_PROGRAM = List.of(
            DocumentKind.CLIENT_HANDOUT,
            DocumentKind.REMINDER_CARD,
            DocumentKind.PRACTICE_LOG,
            DocumentKind.COACH_SHEET);

    private final Folders folders;

    OwnFiles(Folders folders) {
        this.folders = folders;
    }

    /**
     * One file that a clinic may have of its own.
     *
     * @param name below the clinic's folder, with forward slashes
     * @param ours what counts without it
     * @param isOwn whether the clinic has one
     * @param changed its lines that are not in ours, each with its number in front
     */
    record Own(String name, Path place, Path ours, boolean isOwn, List<String> changed) {
        Own {
            changed = List.copyOf(changed);
        }
    }

    Path folder() {
        return folders.clinic();
    }

    /** Every file that may be there, those of the clinic first. */
    List<Own> list() {
        List<Own> all = new ArrayList<>();
        all.add(own("tests.yaml", folders.tests()));
        all.add(own("phases.yaml", folders.vocabularies().resolve("phases.yaml")));
        for (String template : templates()) {
            all.add(own("templates/" + template, folders.templates().resolve(template)));
        }
        return Stream.concat(all.stream().filter(Own::isOwn), all.stream().filter(o -> !o.isOwn()))
                .toList();
    }

    private Set<String> templates() {
        Set<String> names = new TreeSet<>();
        for (Path folder : folders.allTemplates()) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(f -> f.toString().endsWith(".ftlx") || f.toString().endsWith(".yaml"))
                        .forEach(f -> names.add(folder.relativize(f).toString().replace('\\', '/')));
            } catch (IOException e) {
                throw new UncheckedIOException(folder.toString(), e);
            }
        }
        return names;
    }

    private Own own(String name, Path ours) {
        Path place = folders.clinic().resolve(name);
        boolean there = Files.isRegularFile(place);
        return new Own(name, place, ours, there, there ? changed(place, ours) : List.of());
    }

    private static List<String> changed(Path place, Path ours) {
        Set<String> known = Files.isRegularFile(ours)
                ? lines(ours).stream().map(String::strip).collect(Collectors.toSet())
                : Set.of();
        List<String> lines = lines(place);
        List<String> changed = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#") && !known.contains(line)) {
                changed.add((i + 1) + ": " + line);
            }
        }
        return changed;
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            return List.of(); // the check tells what is wrong with it
        }
    }

    /** Makes the clinic's own file: a copy of ours, or for tests the first entry alone, since what is not named stays ours. */
    void begin(Own file) throws IOException {
        Files.createDirectories(file.place().getParent());
        if (file.name().equals("tests.yaml")) {
            Files.writeString(file.place(), firstTest(file.ours()));
        } else {
            Files.copy(file.ours(), file.place());
        }
    }

    private static String firstTest(Path ours) throws IOException {
        YamlNode first = YamlNode.parse(ours.toString(), Files.readString(ours), new Problems())
                .flatMap(root -> root.get("tests"))
                .map(tests -> tests.items().get(0))
                .orElseThrow(() -> new IOException(ours + " has no tests"));
        return "# Tests of this house. An entry with a known id replaces only the keys it names; a new id adds a test.\ntests:\n"
                + "  - id: " + first.text("id").orElseThrow() + "\n    minutes: "
                + first.text("minutes").orElse("1") + "\n";
    }

    /** Ours counts again; the clinic's file is set aside beside its place. */
    Path takeOurs(Own file) throws IOException {
        Path aside = file.place().resolveSibling(file.place().getFileName() + ".before");
        return Files.move(file.place(), aside, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Reads everything as it would count, and prints each paper of an invented client with it.
     *
     * @return what is wrong, with file and line; empty when all is well
     */
    List<Problem> check(StyleText style) throws IOException {
        Problems problems = new Problems();
        Optional<Knowledge> knowledge = Knowledge.read(folders, problems);
        if (knowledge.isPresent()) {
            Optional<DocumentMaker> maker = Documents.maker(folders, knowledge.get(), style, problems);
            if (maker.isPresent()) {
                print(knowledge.get(), maker.get(), problems);
            }
        }
        return problems.all().stream()
                .filter(p -> p.severity() == Problem.Severity.ERROR)
                .toList();
    }

    private void print(Knowledge knowledge, DocumentMaker maker, Problems problems) throws IOException {
        Path sample = folders.home().resolve("samples").resolve("clients").resolve("odile-farrant.yaml");
        Optional<List<ClientVisit>> visits = YamlNode.parse(sample.toString(), Files.readString(sample), problems)
                .flatMap(root -> ClientVisit.readAll(root, Optional.empty(), knowledge, problems));
        if (visits.isEmpty()) {
            return;
        }
        Course course = Course.of(visits.get(), knowledge);
        Planning planning = Planning.along(course, knowledge);
        Optional<Program> program = planning.result() instanceof Program built ? Optional.of(built) : Optional.empty();
        DocumentOrder order = Documents.order(course, Optional.of(planning.needs()), program);
        if (program.isPresent()) {
            OF_A_PROGRAM.forEach(kind -> maker.print(kind, order, problems));
        }
    }
}
