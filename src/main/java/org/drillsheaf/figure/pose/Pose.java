package org.drillsheaf.figure.pose;

import java.util.List;
import java.util.Set;
import org.drillsheaf.figure.body.JointAngles;

/**
 * A pose as its author wrote it: checked for words and ranges, not yet solved.
 *
 * @param file for messages; {@code line} likewise
 * @param heading turn of the whole figure to its left about the vertical, degrees
 * @param angles the preset of the root posture with the written angles over it
 * @param written the angles that the author wrote, each with its side where the joint has two
 * @param solve what the solver may change, in the written order
 * @param feel ids of muscle regions, with {@code .R} or {@code .L} for one side
 */
public record Pose(
        String file,
        int line,
        RootPosture root,
        double heading,
        JointAngles angles,
        Set<Unknown.Angle> written,
        List<Prop> props,
        List<Contact> contacts,
        List<Unknown> solve,
        List<String> feel,
        List<Mark> marks,
        Ghost ghost) {

    /** The same with other angles, which nobody has written yet. */
    public Pose withAngles(JointAngles changed) {
        return new Pose(file, line, root, heading, changed, written, props, contacts, solve, feel, marks, ghost);
    }

    Pose withSolve(List<Unknown> changed) {
        return new Pose(file, line, root, heading, angles, written, props, contacts, changed, feel, marks, ghost);
    }
}
