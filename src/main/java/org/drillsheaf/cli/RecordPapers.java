package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.FrozenPaper;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.KeptProgram;

/**
 * Keeps what was built and printed for a client of the record. A paper of a program that a coach has checked counts as handed
 * out: it is kept with everything it was drawn from. The coach's own sheet stays in the house and is never handed out.
 *
 * @param yaml the client's file that the papers are drawn from
 */
record RecordPapers(OpenRecord record, Folders folders, Knowledge knowledge, String yaml) {
    private static final Set<DocumentKind> STAYS = EnumSet.of(DocumentKind.COACH_SHEET);

    /**
     * Keeps a program as the next version, with the reading it was built on; signs it when a coach has checked it.
     *
     * @return what was kept, in words
     */
    String keep(Program program, ClientVisit read, Optional<String> signedBy, List<Papers.Made> papers) {
        StringWriter reading = new StringWriter();
        PrintWriter lines = new PrintWriter(reading);
        new ReadingText(lines, knowledge.vocabulary().speech("en"), false).print(read.client(), read.reading());
        lines.flush();
        record.store().drills().takeIn(knowledge.vocabulary().library(), record.who());
        record.store().programs().keepReading(record.client(), program.date(), reading.toString(), record.who());
        KeptProgram kept =
                record.store().programs().save(record.client(), program, knowledge.catalogue(), record.who());
        String words = "Kept in the record: version " + kept.version() + " of the program of " + kept.visit();
        if (signedBy.isEmpty()) {
            return words + ", not yet checked by a coach";
        }
        KeptProgram signed = record.store().programs().sign(kept.key(), signedBy.get());
        List<HandedOut> handedOut = papers.stream()
                .filter(paper -> !STAYS.contains(paper.kind()))
                .map(paper -> handOut(paper, Optional.of(signed)))
                .toList();
        return words + ", signed by " + signed.signedBy().orElseThrow() + "; papers handed out: " + handedOut.size();
    }

    /** Keeps a paper as handed out. */
    HandedOut handOut(Papers.Made paper, Optional<KeptProgram> program) {
        FrozenPaper frozen = FrozenPaper.of(
                folders,
                Optional.empty(),
                paper.kind(),
                paper.visit(),
                paper.setting(),
                yaml,
                program.map(KeptProgram::yaml));
        return record.store()
                .documents()
                .handOut(
                        new HandedOut.Draft(
                                record.client(),
                                program.map(KeptProgram::key),
                                paper.kind().id(),
                                paper.visit(),
                                paper.language(),
                                paper.setting().paper().name(),
                                Drillsheaf.version(),
                                frozen.inputs(),
                                paper.pdf()),
                        record.who());
    }

    /** Whether a paper of this kind is given to clients at all. */
    static boolean isHandedOut(DocumentKind kind) {
        return !STAYS.contains(kind);
    }
}
