package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drillsheaf.Problem;

/** The solved keyframes of a drill. */
public record SolvedSheet(PoseSheet sheet, Map<PoseFrame, SolvedPose> poses) {

    public SolvedSheet {
        poses = java.util.Collections.unmodifiableMap(new EnumMap<>(poses));
    }

    public Optional<SolvedPose> pose(PoseFrame frame) {
        return Optional.ofNullable(poses.get(frame));
    }

    /** Every keyframe, start first. */
    public Collection<SolvedPose> all() {
        return poses.values();
    }

    /** What is wrong with any keyframe. */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        poses.values().forEach(p -> problems.addAll(p.problems()));
        return problems;
    }

    /** The distances of the texts by name, statures. */
    public Map<String, Double> distances() {
        Map<String, Double> distances = new TreeMap<>();
        for (Distance distance : sheet.distances()) {
            pose(distance.frame()).flatMap(distance::in).ifPresent(d -> distances.put(distance.name(), d));
        }
        return distances;
    }

    /** Left and right exchanged in every keyframe. */
    public SolvedSheet mirrored() {
        Map<PoseFrame, SolvedPose> turned = new EnumMap<>(PoseFrame.class);
        poses.forEach((frame, pose) -> turned.put(frame, pose.mirrored()));
        return new SolvedSheet(sheet, turned);
    }
}
