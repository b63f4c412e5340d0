package org.drillsheaf.figure.pose;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Vec3;

/** Reads the numbers, vectors and word lists of a pose, and tells what is wrong with them. */
final class NodeNumbers {
    /** No coordinate of a scene is farther away, statures. */
    private static final double FARTHEST = 10;

    private final Problems problems;

    NodeNumbers(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    /** A finite number of reasonable size (statures, degrees below 1000). */
    Optional<Double> number(YamlNode node, String what, double least, double most) {
        Optional<Double> number = node.number();
        if (number.isEmpty()) {
            node.error(
                    problems,
                    "“" + what + "” is " + node.text().map(t -> "“" + t + "”").orElse("no number") + ", not a number",
                    "Write a plain number such as 0.25 or 12");
            return Optional.empty();
        }
        if (number.get() < least || number.get() > most) {
            node.error(
                    problems,
                    "“" + what + "” is " + text(number.get()),
                    "Use a number from " + text(least) + " to " + text(most));
            return Optional.empty();
        }
        return number;
    }

    Optional<Double> length(YamlNode node, String what) {
        return number(node, what, -FARTHEST, FARTHEST);
    }

    double length(YamlNode map, String key, double otherwise) {
        return map.get(key).flatMap(n -> length(n, key)).orElse(otherwise);
    }

    Optional<Vec3> vector(YamlNode node, String what) {
        List<YamlNode> items = node.items();
        if (items.size() != 3) {
            node.error(problems, "“" + what + "” needs three numbers", "Write it as [x, y, z], in statures");
            return Optional.empty();
        }
        Optional<Double> x = length(items.get(0), what);
        Optional<Double> y = length(items.get(1), what);
        Optional<Double> z = length(items.get(2), what);
        return x.isPresent() && y.isPresent() && z.isPresent()
                ? Optional.of(new Vec3(x.get(), y.get(), z.get()))
                : Optional.empty();
    }

    /** A direction as a vector, not of length zero. */
    Optional<Vec3> direction(YamlNode node, String what) {
        Optional<Vec3> vector = vector(node, what);
        if (vector.isPresent() && vector.get().length() < 1e-6) {
            node.error(problems, "“" + what + "” points nowhere", "Write a direction such as [1, 0, 0]");
            return Optional.empty();
        }
        return vector.map(Vec3::unit);
    }

    /** Tells of every key that is not among the known ones. */
    void onlyKeys(YamlNode map, String where, List<String> known) {
        for (var entry : map.entries().entrySet()) {
            if (!known.contains(entry.getKey())) {
                entry.getValue()
                        .error(
                                problems,
                                "“" + entry.getKey() + "” is not known in " + where,
                                "Use one of: " + String.join(", ", known));
            }
        }
    }

    static String text(double number) {
        double rounded = Math.round(number * 1000) / 1000.0;
        return rounded == Math.rint(rounded) && Math.abs(rounded) < 1e9
                ? Long.toString((long) rounded)
                : Double.toString(rounded);
    }
}
