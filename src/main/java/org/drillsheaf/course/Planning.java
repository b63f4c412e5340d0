package org.drillsheaf.course;

import java.util.Optional;
import org.drillsheaf.program.BuildResult;
import org.drillsheaf.program.Builder;
import org.drillsheaf.program.Explainer;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Program;

/**
 * The program of the last visit of a course. A file holds no programs, so those of the earlier visits are built again from
 * what was known then; the last one changes no more of them than it must.
 */
public record Planning(Needs needs, BuildResult result) {

    /** @throws IllegalArgumentException when the safety answers of no visit are clear */
    public static Planning along(Course course, Knowledge knowledge) {
        Optional<Program> before = Optional.empty();
        Planning planning = null;
        for (Course.Stop stop : course.stops()) {
            if (!stop.visit().reading().safety().isClear()) {
                continue;
            }
            Needs needs = needs(stop, before, knowledge);
            planning = new Planning(needs, knowledge.builder().build(needs));
            if (planning.result() instanceof Program program) {
                before = Optional.of(program);
            }
        }
        if (planning == null) {
            throw new IllegalArgumentException("the last visit must be clear");
        }
        return planning;
    }

    /** Answers questions about the program; {@code program} is this planning's result. */
    public Explainer explainer(Program program, Knowledge knowledge) {
        Builder builder = knowledge.builder();
        return builder.explainer(needs, builder.offers(needs), program);
    }

    private static Needs needs(Course.Stop stop, Optional<Program> before, Knowledge knowledge) {
        ClientVisit visit = stop.visit();
        if (before.isPresent() && stop.change().isPresent()) {
            return knowledge
                    .needsMaker()
                    .after(
                            before.get(),
                            stop.change().get().decision().step(),
                            visit.client(),
                            visit.reading(),
                            visit.safety(),
                            visit.wishes());
        }
        return knowledge
                .needsMaker()
                .first(visit.client(), visit.reading(), visit.safety(), visit.wishes(), visit.gates(knowledge));
    }
}
