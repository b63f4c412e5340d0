package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/**
 * Reads the {@code pose} of a drill: keyframes, views, distances. A keyframe with {@code from: start} is the start with
 * its own words laid over it: maps merge, lists given again replace; with {@code ghost: start} its picture shows where the
 * movement came from. A variant's pose is laid over the drill's with
 * {@link YamlNode#with} before it is read here.
 */
public final class PoseSheetReader {
    private static final List<String> KEYS = List.of("views", "distances", "start", "move", "end");

    private PoseSheetReader() {}

    /** @return empty when there was an error; the reasons then stand in {@code problems} */
    public static Optional<PoseSheet> read(YamlNode node, Problems problems) {
        Problems found = new Problems();
        NodeNumbers numbers = new NodeNumbers(found);
        if (!node.isMap() || !node.has("start")) {
            node.error(found, "There is no start keyframe", "Write start: with root: and joints:");
        }
        numbers.onlyKeys(node, "the pose of a drill", KEYS);
        Map<PoseFrame, Pose> poses = new EnumMap<>(PoseFrame.class);
        for (PoseFrame frame : PoseFrame.values()) {
            keyframe(node, frame, 0, found)
                    .flatMap(n -> PoseReader.read(n, othersThan(frame, node), found))
                    .ifPresent(pose -> poses.put(frame, pose));
        }
        List<Distance> distances = new ArrayList<>();
        node.get("distances").ifPresent(map -> map.entries()
                .forEach((name, value) -> distance(name, value, numbers).ifPresent(distances::add)));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(new PoseSheet(poses, node.texts("views"), distances));
    }

    private static Set<PoseFrame> othersThan(PoseFrame frame, YamlNode pose) {
        Set<PoseFrame> others = EnumSet.noneOf(PoseFrame.class);
        for (PoseFrame other : PoseFrame.values()) {
            if (other != frame && pose.has(other.id())) {
                others.add(other);
            }
        }
        return others;
    }

    /** The keyframe with everything it builds upon under it. */
    public static Optional<YamlNode> keyframe(YamlNode pose, PoseFrame frame) {
        return keyframe(pose, frame, 0, new Problems());
    }

    private static Optional<YamlNode> keyframe(YamlNode pose, PoseFrame frame, int depth, Problems problems) {
        Optional<YamlNode> written = pose.get(frame.id());
        Optional<String> from = written.flatMap(n -> n.text("from"));
        if (written.isEmpty() || from.isEmpty()) {
            return written;
        }
        Optional<PoseFrame> base = PoseFrame.of(from.get());
        boolean circle = depth > PoseFrame.values().length;
        if (base.isEmpty() || circle || pose.get(base.get().id()).isEmpty()) {
            written.get()
                    .error(
                            problems,
                            circle
                                    ? "The keyframes build upon each other in a circle"
                                    : "There is no keyframe “" + from.get() + "” to build upon",
                            "Write from: start, or from: move");
            return Optional.empty();
        }
        return keyframe(pose, base.get(), depth + 1, problems).map(n -> n.with(written.get()));
    }

    private static Optional<Distance> distance(String name, YamlNode node, NodeNumbers numbers) {
        numbers.onlyKeys(node, "a distance", List.of("of", "from", "along", "keyframe", "in"));
        BodyWords words = new BodyWords(numbers.problems());
        Optional<String> of = node.get("of").flatMap(words::point);
        Optional<String> from = node.text("from");
        if (!node.has("of") || from.isEmpty()) {
            node.error(
                    numbers.problems(),
                    "The distance “" + name + "” needs of: and from:",
                    "Write for example {of: heel-back.R, from: wall, along: x}");
            return Optional.empty();
        }
        PoseFrame frame = node.text("keyframe")
                .or(() -> node.text("in"))
                .flatMap(PoseFrame::of)
                .orElse(PoseFrame.START);
        return of.map(point ->
                new Distance(name, frame, point, from.get(), node.text("along").flatMap(Distance::axis), node.line()));
    }
}
