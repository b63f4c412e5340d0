package org.drillsheaf.figure.pose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.MuscleRegions;

/** Reads one pose (one keyframe) from YAML and tells every mistake with its line. */
public final class PoseReader {
    private static final List<String> KEYS = List.of(
            "from",
            "root",
            "pose",
            "heading",
            "joints",
            "hold",
            "pelvis",
            "props",
            "contacts",
            "solve",
            "feel",
            "marks",
            "annotations",
            "ghost",
            "views",
            "note");
    /** Things that can be touched though nobody wrote them. */
    private static final String FLOOR = "floor";

    private final Set<PoseFrame> others;

    private PoseReader(Set<PoseFrame> others) {
        this.others = others;
    }

    /** @return empty when there was an error; the reasons then stand in {@code problems} */
    public static Optional<Pose> read(YamlNode node, Problems problems) {
        return read(node, Set.of(), problems);
    }

    /** @param others keyframes of the same drill, which the ghost may show */
    static Optional<Pose> read(YamlNode node, Set<PoseFrame> others, Problems problems) {
        Problems found = new Problems();
        Pose pose = new PoseReader(others).readPose(node, new NodeNumbers(found));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(pose);
    }

    private Pose readPose(YamlNode node, NodeNumbers numbers) {
        Problems problems = numbers.problems();
        BodyWords words = new BodyWords(problems);
        if (!node.isMap()) {
            node.error(problems, "A pose is a map", "Write root: and joints:");
        }
        numbers.onlyKeys(node, "a pose", KEYS);
        RootPosture root = root(node, problems);
        JointReader joints = new JointReader(numbers);
        JointAngles held = node.get("hold")
                .map(n -> new HoldReader(problems).read(n, root.angles()))
                .orElse(root.angles());
        JointAngles angles = node.get("joints").map(n -> joints.read(n, held)).orElse(held);
        List<Prop> props = node.get("props")
                .map(n -> new PropReader(numbers, words).read(n))
                .orElse(List.of());
        Set<String> planes = planes(props);
        Set<String> surfaces = new TreeSet<>(planes);
        props.forEach(p -> surfaces.add(p.id()));
        List<Contact> contacts = node.get("contacts")
                .map(n -> new ContactReader(numbers, words, surfaces, planes).read(n))
                .orElse(List.of());
        List<Unknown> solve = node.get("solve").map(joints::readUnknowns).orElse(List.of());
        List<Mark> marks = node.get("marks")
                .or(() -> node.get("annotations"))
                .map(n -> new MarkReader(numbers, words).read(n))
                .orElse(List.of());
        double heading = node.get("heading")
                .flatMap(n -> numbers.number(n, "heading", -360, 360))
                .orElse(0.);
        return new Pose(
                node.file(),
                node.line(),
                root,
                heading,
                angles,
                node.get("joints").map(JointReader::written).orElse(Set.of()),
                props,
                contacts,
                solve,
                feel(node, problems),
                marks,
                ghost(node, joints, problems));
    }

    private static RootPosture root(YamlNode node, Problems problems) {
        Optional<YamlNode> written = node.get("root").or(() -> node.get("pose"));
        String word = written.flatMap(YamlNode::text).orElse("standing");
        String id = word.equals("quadruped") ? "hands-and-knees" : word;
        Optional<RootPosture> root = RootPosture.of(id);
        if (root.isEmpty()) {
            written.orElse(node)
                    .error(
                            problems,
                            "There is no root posture “" + word + "”",
                            "Use one of: " + String.join(", ", RootPosture.ids()));
        }
        return root.orElse(RootPosture.STANDING);
    }

    /** Names of the planes of all props; the floor is always there. */
    private static Set<String> planes(List<Prop> props) {
        Set<String> names = new TreeSet<>(Set.of(FLOOR));
        for (Prop prop : props) {
            if (prop.kind().isFurniture() || prop.place() instanceof Prop.Place.At) {
                names.addAll(PropShapes.planeNames(prop));
            }
        }
        return names;
    }

    private static List<String> feel(YamlNode node, Problems problems) {
        List<String> feel = node.texts("feel");
        for (String id : feel) {
            if (!MuscleRegions.isKnown(id)) {
                node.get("feel")
                        .orElse(node)
                        .error(
                                problems,
                                "There is no muscle region “" + id + "”",
                                "Use one of: " + String.join(", ", MuscleRegions.ids())
                                        + "; with .R or .L for one side");
            }
        }
        return feel;
    }

    private Ghost ghost(YamlNode node, JointReader joints, Problems problems) {
        return node.get("ghost")
                .map(written ->
                        written.isMap() ? ghostOfAngles(written, joints, problems) : ghostOfKeyframe(written, problems))
                .orElse(Ghost.NONE);
    }

    private static Ghost ghostOfAngles(YamlNode written, JointReader joints, Problems problems) {
        Map<Unknown.Angle, Double> angles = new LinkedHashMap<>();
        written.entries().forEach((key, value) -> {
            Optional<Unknown.Angle> angle = JointReader.angle(key);
            if (angle.isEmpty()) {
                value.error(problems, "“" + key + "” is no angle", "Write for example hip.L.flex: 60");
            } else {
                joints.degrees(value, key, angle.get().motion()).ifPresent(d -> angles.put(angle.get(), d));
            }
        });
        return new Ghost.OfAngles(angles);
    }

    private Ghost ghostOfKeyframe(YamlNode written, Problems problems) {
        Optional<PoseFrame> frame = written.text().flatMap(PoseFrame::of).filter(others::contains);
        if (frame.isEmpty()) {
            written.error(
                    problems,
                    "The ghost shows no other keyframe of this drill",
                    "Write ghost: start at a later keyframe, or angles like ghost: {hip.L.flex: 60}");
        }
        return frame.<Ghost>map(Ghost.OfKeyframe::new).orElse(Ghost.NONE);
    }
}
