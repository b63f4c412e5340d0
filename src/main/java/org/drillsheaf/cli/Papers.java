package org.drillsheaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramYaml;

/** Writes the papers of one visit into a folder. */
final class Papers {
    private final Course course;
    private final Path out;
    private final DocumentMaker maker;

    Papers(DocumentMaker maker, Course course, Path out) {
        this.maker = maker;
        this.course = course;
        this.out = out;
    }

    /** Reads templates, phrases and the house style; one maker is enough for any number of documents. */
    static DocumentMaker maker(Folders folders, Knowledge knowledge) {
        Problems problems = new Problems();
        Optional<DocumentMaker> maker = Documents.maker(folders, knowledge, problems);
        BadInput.stopAtErrors(problems);
        return maker.orElseThrow();
    }

    /**
     * A paper that was made and not written yet.
     *
     * @param language that it is in
     */
    record Made(DocumentKind kind, DocumentSetting setting, LocalDate visit, String language, byte[] pdf) {}

    /** The wanted documents; all are made before the first is written. */
    List<Made> make(Planning planning, Program program, List<DocumentKind> kinds, Optional<String> signedBy) {
        DocumentOrder order = Documents.order(course, Optional.of(planning.needs()), Optional.of(program));
        DocumentOrder signed = order.with(order.setting().signedBy(signedBy));
        Problems problems = new Problems();
        List<Made> made = new ArrayList<>();
        kinds.forEach(kind -> make(maker, kind, signed, problems).ifPresent(made::add));
        BadInput.stopAtErrors(problems);
        return made;
    }

    /** One document; empty when {@code problems} got an error. */
    static Optional<Made> make(DocumentMaker maker, DocumentKind kind, DocumentOrder order, Problems problems) {
        return maker.make(kind, order, problems).flatMap(document -> maker.print(document, problems)
                .map(pdf -> new Made(
                        kind,
                        order.settingOf(kind),
                        order.now().visit().date(),
                        document.frame().language(),
                        pdf)));
    }

    /** The note for a clinician when a safety answer stops the program. */
    Made referralNote() {
        Problems problems = new Problems();
        Optional<Made> note = make(
                maker,
                DocumentKind.REFERRAL_NOTE,
                Documents.order(course, Optional.empty(), Optional.empty()),
                problems);
        BadInput.stopAtErrors(problems);
        return note.orElseThrow();
    }

    /** The program as YAML and its papers. */
    List<Path> write(Program program, List<Made> made) {
        List<Path> written = new ArrayList<>();
        Path yaml = file("program.yaml");
        TextFile.write(yaml, ProgramYaml.write(program).getBytes(StandardCharsets.UTF_8));
        written.add(yaml);
        made.forEach(paper -> written.add(write(paper)));
        return written;
    }

    Path write(Made paper) {
        Path file = file(name(paper.kind()));
        TextFile.write(file, paper.pdf());
        return file;
    }

    /** What the file of a paper ends in. */
    static String name(DocumentKind kind) {
        return (kind == DocumentKind.CLIENT_HANDOUT ? "handout" : kind.id()) + ".pdf";
    }

    private Path file(String name) {
        return out.resolve(course.last().visit().client().id() + "-" + name);
    }
}
