package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Planning;
import org.drillsheaf.program.Program;
import org.drillsheaf.screen.Reading;

/**
 * What a draft means at one visit.
 *
 * @param draft what was read
 * @param course up to the visit; empty when the draft cannot be read, and then {@code problems} says why
 */
public record Evaluation(ClientDraft draft, LocalDate date, Optional<Course> course, List<Problem> problems) {

    public Evaluation {
        problems = List.copyOf(problems);
    }

    public Optional<ClientVisit> visit() {
        return course.map(c -> c.last().visit());
    }

    public Optional<Reading> reading() {
        return visit().map(ClientVisit::reading);
    }

    /** Whether the safety answers and the re-screen let a program be built. */
    public boolean mayBuild() {
        return reading().filter(r -> r.safety().isClear()).isPresent()
                && !course.orElseThrow().last().refers();
    }

    /** Key of the words when a safety answer stops the program or holds it; empty when none does. */
    public Optional<String> barredBySafety() {
        return reading().map(r -> r.safety().status()).flatMap(status -> switch (status) {
            case STOPPED -> Optional.of("safety.stopped");
            case HELD -> Optional.of("safety.held");
            case UNANSWERED, CLEAR -> Optional.empty();
        });
    }

    /** The program for an evaluation. */
    public record Built(Evaluation of, Planning planning) {

        public Optional<Program> program() {
            return planning.result() instanceof Program program ? Optional.of(program) : Optional.empty();
        }
    }
}
