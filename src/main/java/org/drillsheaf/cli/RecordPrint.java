package org.drillsheaf.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.FrozenPaper;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.KeptProgram;

/**
 * Prints the papers of one version of a program of the record. What was handed out before comes out again byte for byte,
 * whatever has changed since; what was not is drawn now, and counts as handed out when a coach has checked the program.
 *
 * @param setting by the client's own setting, what was asked for on the command line
 */
record RecordPrint(
        Folders folders,
        Knowledge knowledge,
        DocumentMaker maker,
        List<DocumentKind> kinds,
        List<Optional<String>> languages,
        UnaryOperator<DocumentSetting> setting,
        Path out) {

    /** Which program: the newest version of the last visit unless a date or a number is given. */
    record Wanted(Optional<LocalDate> visit, Optional<Integer> version) {}

    /** What came of it. */
    record Outcome(int again, int anew) {}

    Outcome print(OpenRecord record, Wanted wanted, Optional<String> signedBy) {
        ClientAtWork client = ClientAtWork.of(record);
        KeptProgram found = program(record, client, wanted);
        KeptProgram kept = signedBy.map(coach -> record.store().programs().sign(found.key(), coach))
                .orElse(found);
        int again = 0;
        int anew = 0;
        for (DocumentKind kind : kinds) {
            for (Optional<String> language : languages) {
                Optional<HandedOut> before = handedOut(record, kept, kind, language);
                byte[] pdf;
                if (before.isPresent()) {
                    pdf = record.store().documents().pdf(before.get());
                    record.store().documents().printedAgain(before.get().key(), record.who());
                    again++;
                } else {
                    pdf = draw(record, client, kept, kind, language);
                    anew++;
                }
                String id = record.store()
                        .clients()
                        .summary(record.client())
                        .orElseThrow()
                        .id();
                String tag = language.map(l -> "-" + l).orElse("");
                TextFile.write(out.resolve(id + "-" + Papers.name(kind).replace(".pdf", tag + ".pdf")), pdf);
            }
        }
        return new Outcome(again, anew);
    }

    private static KeptProgram program(OpenRecord record, ClientAtWork client, Wanted wanted) {
        return record.store().programs().list(record.client()).stream()
                .filter(p -> wanted.visit().map(p.visit()::equals).orElse(true))
                .filter(p -> wanted.version().map(v -> v == p.version()).orElse(true))
                .findFirst()
                .orElseThrow(() -> BadInput.because(
                        client.name(), "There is no such program for this client", "Build it with “build --store”"));
    }

    /** One that says the same as what is asked for; size and paper must fit, too, when they were asked for. */
    private Optional<HandedOut> handedOut(
            OpenRecord record, KeptProgram program, DocumentKind kind, Optional<String> language) {
        return record.store().documents().list(record.client()).stream()
                .filter(d -> d.program().equals(Optional.of(program.key()))
                        && d.kind().equals(kind.id()))
                .filter(d -> language.map(d.language()::equals).orElse(true))
                .filter(d -> fits(record, d))
                .findFirst();
    }

    private boolean fits(OpenRecord record, HandedOut document) {
        return FrozenPaper.of(record.store().documents().inputs(document))
                .map(FrozenPaper::setting)
                .map(own -> setting.apply(own).signedBy(own.signedBy()).equals(own))
                .orElse(false);
    }

    private byte[] draw(
            OpenRecord record, ClientAtWork client, KeptProgram kept, DocumentKind kind, Optional<String> language) {
        Program program = ProgramFile.read(
                client.name() + ", program " + kept.visit() + " version " + kept.version(),
                kept.yaml(),
                knowledge.catalogue());
        Course course = Course.of(client.visits(Optional.of(kept.visit()), knowledge), knowledge);
        if (!course.last().visit().reading().safety().isClear()) {
            throw BadInput.because(
                    client.name(),
                    "A safety answer of " + kept.visit() + " stands against this program",
                    "Build again; it prints the referral note");
        }
        DocumentOrder order = Documents.order(course, Optional.empty(), Optional.of(program));
        DocumentSetting wanted =
                setting.apply(order.setting()).inLanguage(language).signedBy(kept.signedBy());
        Problems problems = new Problems();
        Optional<Papers.Made> made = Papers.make(maker, kind, order.with(wanted), problems);
        BadInput.stopAtErrors(problems);
        if (kept.signedBy().isPresent() && RecordPapers.isHandedOut(kind)) {
            new RecordPapers(record, folders, knowledge, client.yaml()).handOut(made.orElseThrow(), Optional.of(kept));
        }
        return made.orElseThrow().pdf();
    }
}
