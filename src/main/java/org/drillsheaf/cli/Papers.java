package org.drillsheaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
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

    /** The program as YAML and the wanted documents; all are made before the first is written. */
    List<Path> program(Planning planning, Program program, List<DocumentKind> kinds, Optional<String> signedBy) {
        DocumentOrder order = Documents.order(course, Optional.of(planning.needs()), Optional.of(program));
        DocumentOrder signed = order.with(order.setting().signedBy(signedBy));
        Problems problems = new Problems();
        Map<Path, byte[]> papers = new LinkedHashMap<>();
        papers.put(file("program.yaml"), ProgramYaml.write(program).getBytes(StandardCharsets.UTF_8));
        for (DocumentKind kind : kinds) {
            maker.print(kind, signed, problems).ifPresent(pdf -> papers.put(file(name(kind)), pdf));
        }
        BadInput.stopAtErrors(problems);
        papers.forEach(TextFile::write);
        return new ArrayList<>(papers.keySet());
    }

    /** The note for a clinician when a safety answer stops the program. */
    Path referralNote() {
        Problems problems = new Problems();
        Optional<byte[]> pdf = maker.print(
                DocumentKind.REFERRAL_NOTE, Documents.order(course, Optional.empty(), Optional.empty()), problems);
        BadInput.stopAtErrors(problems);
        Path file = file(name(DocumentKind.REFERRAL_NOTE));
        TextFile.write(file, pdf.orElseThrow());
        return file;
    }

    private static String name(DocumentKind kind) {
        return (kind == DocumentKind.CLIENT_HANDOUT ? "handout" : kind.id()) + ".pdf";
    }

    private Path file(String name) {
        return out.resolve(course.last().visit().client().id() + "-" + name);
    }
}
