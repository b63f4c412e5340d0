package org.drillsheaf.figure.pose;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;

/**
 * All keyframes of a drill (or of one of its variants), with the views of its pictures and the distances of its texts.
 *
 * @param poses at least the start
 * @param views views in the pictures' words: {@code side}, {@code front}, {@code top}, {@code q:azimuth,elevation}
 */
public record PoseSheet(Map<PoseFrame, Pose> poses, List<String> views, List<Distance> distances) {

    public PoseSheet {
        poses = java.util.Collections.unmodifiableMap(new EnumMap<>(poses));
    }

    public Optional<Pose> pose(PoseFrame frame) {
        return Optional.ofNullable(poses.get(frame));
    }

    public SolvedSheet solve() {
        return solve(BodyBuild.AVERAGE);
    }

    public SolvedSheet solve(BodyBuild build) {
        Map<PoseFrame, SolvedPose> solved = new EnumMap<>(PoseFrame.class);
        poses.forEach((frame, pose) -> solved.put(frame, PoseSolver.solve(pose, build)));
        poses.forEach((frame, pose) -> {
            if (pose.ghost() instanceof Ghost.OfKeyframe ghost && solved.containsKey(ghost.frame())) {
                Body shown = solved.get(ghost.frame()).body();
                solved.computeIfPresent(frame, (f, own) -> own.withGhost(shown));
            }
        });
        return new SolvedSheet(this, solved);
    }
}
