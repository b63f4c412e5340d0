package org.drillsheaf.course;

import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.handout.HandoutFiles;
import org.drillsheaf.handout.StyleText;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Program;

/** From a course to what its documents are made from. Decides and writes nothing. */
public final class Documents {
    private Documents() {}

    /**
     * Reads templates, phrases and the house style; one maker is enough for any number of documents.
     *
     * @return empty when {@code problems} got an error
     */
    public static Optional<DocumentMaker> maker(Folders folders, Knowledge knowledge, Problems problems) {
        return HandoutFiles.load(folders.allTemplates(), folders.house(), folders.schema("house"), problems)
                .map(printer -> new DocumentMaker(printer, knowledge.vocabulary(), knowledge.safety()));
    }

    /** The same with the clinic's own house style. */
    public static Optional<DocumentMaker> maker(
            Folders folders, Knowledge knowledge, StyleText style, Problems problems) {
        return HandoutFiles.load(folders.allTemplates(), style, folders.schema("house"), problems)
                .map(printer -> new DocumentMaker(printer, knowledge.vocabulary(), knowledge.safety()));
    }

    /** What the documents of a course are made from, as the client's file asks for them. */
    public static DocumentOrder order(Course course, Optional<Needs> needs, Optional<Program> program) {
        return new DocumentOrder(
                course.last().visit().client(),
                course.stops().stream().map(stop -> seen(stop.visit())).toList(),
                course.last()
                        .change()
                        .map(c -> new DocumentOrder.Change(
                                c.phaseBefore(), course.last().phase(), c.comparison(), c.gate(), c.decision())),
                needs,
                program,
                DocumentSetting.of(course.last().visit().client()));
    }

    private static DocumentOrder.Seen seen(ClientVisit visit) {
        return new DocumentOrder.Seen(
                visit.visit(), visit.reading(), visit.conditions(), visit.safety(), visit.wishes());
    }
}
