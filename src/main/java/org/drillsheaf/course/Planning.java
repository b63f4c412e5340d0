package org.drillsheaf.course;

import org.drillsheaf.program.BuildResult;
import org.drillsheaf.program.Builder;
import org.drillsheaf.program.Explainer;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Program;

/** What was asked of the builder for one visit, and its answer. */
public record Planning(Needs needs, BuildResult result) {

    /** The program of the last visit of a course; see {@link Planner}. */
    public static Planning along(Course course, Knowledge knowledge) {
        return new Planner(knowledge).along(course);
    }

    /** Answers questions about the program; {@code program} is this planning's result. */
    public Explainer explainer(Program program, Knowledge knowledge) {
        Builder builder = knowledge.builder();
        return builder.explainer(needs, builder.offers(needs), program);
    }
}
