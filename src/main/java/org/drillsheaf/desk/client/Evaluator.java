package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planner;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;

/** Reads drafts and builds their programs, the same way as the command line. Blocks. Safe for several threads. */
public final class Evaluator {
    private final Knowledge knowledge;
    private final Planner planner;

    public Evaluator(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.planner = new Planner(knowledge);
    }

    public Knowledge knowledge() {
        return knowledge;
    }

    /** What the draft means at a visit. */
    public Evaluation read(ClientDraft draft, LocalDate date) {
        Problems problems = new Problems();
        Optional<List<ClientVisit>> visits = YamlNode.parse(
                        draft.id(), readable(draft).yaml(), problems)
                .flatMap(root -> ClientVisit.readAll(root, Optional.of(date), knowledge, problems));
        return new Evaluation(draft, date, visits.map(v -> Course.of(v, knowledge)), problems.all());
    }

    /** Half of a pair of values is kept in the record, and means nothing until the other half is there. */
    private ClientDraft readable(ClientDraft draft) {
        ClientDraft readable = draft;
        for (LocalDate date : draft.visits()) {
            Content visit = draft.visit(date);
            Content whole = org.drillsheaf.desk.screen.ScreenEntry.withoutHalves(
                    visit, knowledge.vocabulary().reading().battery());
            if (whole != visit) {
                readable = readable.with(PartKey.visit(date), whole);
            }
        }
        return readable;
    }

    /**
     * The program of an evaluation.
     *
     * @param stopAsked ends the search with the best found so far
     * @throws IllegalArgumentException when none may be built
     */
    public Evaluation.Built build(Evaluation evaluation, BooleanSupplier stopAsked) {
        return new Evaluation.Built(evaluation, planner.along(course(evaluation), stopAsked));
    }

    /** The program of an evaluation if it may be built and nothing has to be searched for; takes no longer than the reading. */
    public Optional<Evaluation.Built> buildIfKnown(Evaluation evaluation) {
        return Optional.of(evaluation)
                .filter(Evaluation::mayBuild)
                .flatMap(e -> planner.ifKnown(course(e)))
                .map(planning -> new Evaluation.Built(evaluation, planning));
    }

    private static Course course(Evaluation evaluation) {
        return evaluation.course().orElseThrow();
    }
}
