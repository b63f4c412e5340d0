package org.drillsheaf.figure.pose;

import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.Posture;
import org.drillsheaf.figure.body.Proportions;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/** Checks that a word names a point of the body. */
final class BodyWords {
    /** Any body will do: all have the same points. */
    static final Body MODEL = Body.of(
            Skeleton.of(
                    new Posture(Vec3.ZERO, Rotation.NONE, JointAngles.STRAIGHT, java.util.Map.of()),
                    Proportions.STANDARD),
            BodyBuild.AVERAGE);

    private final Problems problems;

    BodyWords(Problems problems) {
        this.problems = problems;
    }

    Optional<String> point(YamlNode node) {
        Optional<String> word = node.text();
        if (word.isPresent() && BodyPoints.find(MODEL, word.get()).isPresent()) {
            return word;
        }
        node.error(
                problems,
                "There is no body point “" + word.orElse("") + "”",
                "Use a joint such as knee.R, heel.L, tip.R, a pair such as knees, or a point of the skin such as"
                        + " trunk@0.42,180");
        return Optional.empty();
    }
}
