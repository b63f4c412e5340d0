package org.drillsheaf.desk.pose;

import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.figure.pose.SolvedPose;

/**
 * What the solver or the reader says about a keyframe.
 *
 * @param fix an angle that may be written as the contacts made it
 */
public record PoseMessage(Problem problem, Optional<SolvedPose.MovedAngle> fix) {
    public boolean stops() {
        return problem.severity() == Problem.Severity.ERROR;
    }
}
