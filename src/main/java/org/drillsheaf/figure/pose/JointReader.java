package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;

/** Reads {@code joints}: first those of both sides, then those of one side over them. */
final class JointReader {
    private final NodeNumbers numbers;

    JointReader(NodeNumbers numbers) {
        this.numbers = numbers;
    }

    private Problems problems() {
        return numbers.problems();
    }

    JointAngles read(YamlNode joints, JointAngles preset) {
        JointAngles angles = preset;
        for (boolean sided : new boolean[] {false, true}) {
            for (var entry : joints.entries().entrySet()) {
                if (isSided(entry.getKey()) == sided) {
                    angles = readJoint(entry.getKey(), entry.getValue(), angles);
                }
            }
        }
        return angles;
    }

    /** The angles that are written, each with its side where the joint has two. */
    static Set<Unknown.Angle> written(YamlNode joints) {
        Set<Unknown.Angle> written = new HashSet<>();
        joints.entries().forEach((key, movements) -> {
            String joint = isSided(key) ? key.substring(0, key.length() - 2) : key;
            movements.entries().keySet().stream()
                    .flatMap(movement -> Motion.of(joint, movement).stream())
                    .forEach(
                            motion -> sides(key, motion).forEach(side -> written.add(new Unknown.Angle(motion, side))));
        });
        return written;
    }

    private static List<Optional<Side>> sides(String key, Motion motion) {
        return isSided(key) || !motion.isPaired()
                ? List.of(side(key))
                : List.of(Optional.of(Side.RIGHT), Optional.of(Side.LEFT));
    }

    private static boolean isSided(String key) {
        return key.endsWith(".R") || key.endsWith(".L");
    }

    private static Optional<Side> side(String key) {
        return key.endsWith(".R")
                ? Optional.of(Side.RIGHT)
                : key.endsWith(".L") ? Optional.of(Side.LEFT) : Optional.empty();
    }

    private JointAngles readJoint(String key, YamlNode node, JointAngles angles) {
        String joint = isSided(key) ? key.substring(0, key.length() - 2) : key;
        List<Motion> motions = Motion.of(joint);
        if (motions.isEmpty()) {
            node.error(
                    problems(),
                    "There is no joint “" + key + "”",
                    "Use one of: " + String.join(", ", Motion.joints()) + "; with .R or .L for one side");
            return angles;
        }
        if (isSided(key) && !motions.get(0).isPaired()) {
            node.error(problems(), "The " + joint + " has no side", "Write “" + joint + "” without .R or .L");
            return angles;
        }
        if (!node.isMap()) {
            node.error(
                    problems(),
                    "“" + key + "” needs its movements",
                    "Write for example " + key + ": {" + motions.get(0).movement() + ": 10}");
            return angles;
        }
        JointAngles changed = angles;
        for (var entry : node.entries().entrySet()) {
            Optional<Motion> motion = Motion.of(joint, entry.getKey());
            if (motion.isEmpty()) {
                entry.getValue()
                        .error(
                                problems(),
                                "The " + joint + " has no movement “" + entry.getKey() + "”",
                                "Use one of: "
                                        + motions.stream().map(Motion::movement).collect(Collectors.joining(", ")));
                continue;
            }
            Optional<Double> degrees = degrees(entry.getValue(), key, motion.get());
            if (degrees.isPresent()) {
                changed = set(changed, motion.get(), side(key), degrees.get());
            }
        }
        return changed;
    }

    /** An angle within the joint's limit. */
    Optional<Double> degrees(YamlNode node, String joint, Motion motion) {
        Optional<Double> number = node.number();
        if (number.isEmpty()) {
            node.error(
                    problems(),
                    joint + " " + motion.movement() + " is "
                            + node.text().map(t -> "“" + t + "”").orElse("no number") + ", not a number",
                    "Write degrees as a plain number such as 45");
            return Optional.empty();
        }
        JointLimits.Limit limit = JointLimits.of(motion);
        if (!limit.allows(number.get())) {
            node.error(
                    problems(),
                    joint + " " + motion.movement() + " is " + NodeNumbers.text(number.get())
                            + "°, beyond what a body can do",
                    "Use degrees from " + NodeNumbers.text(limit.least()) + " to " + NodeNumbers.text(limit.most()));
            return Optional.empty();
        }
        return number;
    }

    /** Sets one or both sides; a plain shoulder lift written later takes an earlier from-trunk or elev back. */
    static JointAngles set(JointAngles angles, Motion motion, Optional<Side> side, double degrees) {
        JointAngles changed = angles;
        List<Side> sides = side.map(List::of).orElse(List.of(Side.RIGHT, Side.LEFT));
        for (Side one : sides) {
            changed = changed.with(motion, one, degrees);
            for (Motion other : replacedBy(motion)) {
                changed = changed.without(other, one);
            }
        }
        return changed;
    }

    private static List<Motion> replacedBy(Motion motion) {
        return switch (motion) {
            case SHOULDER_FROM_TRUNK -> List.of(Motion.SHOULDER_ELEV);
            case SHOULDER_ELEV -> List.of(Motion.SHOULDER_FROM_TRUNK);
            default -> List.of();
        };
    }

    /** Reads what may be changed: {@code root.x}, {@code heading}, {@code hip.flex}, {@code hip.R.flex}. */
    List<Unknown> readUnknowns(YamlNode list) {
        List<Unknown> unknowns = new ArrayList<>();
        for (YamlNode item : list.items()) {
            String word = item.text().orElse("");
            Optional<Unknown> unknown = unknown(word);
            if (unknown.isEmpty()) {
                item.error(
                        problems(),
                        "“" + word + "” is nothing that can be solved for",
                        "Write root.x, root.y, root.z, heading, or a joint and its movement such as hip.flex or"
                                + " hip.R.flex");
            } else if (unknowns.contains(unknown.get())) {
                item.error(problems(), "“" + word + "” stands twice under solve", "Keep one of the two");
            } else {
                unknowns.add(unknown.get());
            }
        }
        return unknowns;
    }

    static Optional<Unknown> unknown(String word) {
        return switch (word) {
            case "root.x" -> Optional.of(new Unknown.Root(Unknown.Axis.X));
            case "root.y" -> Optional.of(new Unknown.Root(Unknown.Axis.Y));
            case "root.z" -> Optional.of(new Unknown.Root(Unknown.Axis.Z));
            case "heading" -> Optional.of(new Unknown.Heading());
            default -> angle(word).map(a -> a);
        };
    }

    static Optional<Unknown.Angle> angle(String word) {
        int dot = word.lastIndexOf('.');
        if (dot < 0) {
            return Optional.empty();
        }
        String key = word.substring(0, dot);
        String joint = isSided(key) ? key.substring(0, key.length() - 2) : key;
        return Motion.of(joint, word.substring(dot + 1))
                .filter(m -> m.isPaired() || !isSided(key))
                .map(m -> new Unknown.Angle(m, side(key)));
    }
}
