package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Ids;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;

/** Reads what stands under one test of one visit. */
record MeasurementReader(MovementTest test, LocalDate date, Problems problems) {
    /** Pain from which a value counts as painful, 0 to 10. */
    static final int PAINFUL_FROM = 3;

    private static final String NOT_TESTED = "not-tested";
    private static final Set<String> VALUE_KEYS =
            Set.of("value", "pain", "stopped", "or-more", "or-less", "note", "unit");

    List<Measurement> read(YamlNode node) {
        if (node.text().filter(NOT_TESTED::equals).isPresent()) {
            return List.of();
        }
        if (!node.isMap()) {
            node.error(
                    problems,
                    "The value of " + test.id() + " has no unit",
                    test.sided()
                            ? "Write {unit: " + test.unit().id() + ", left: …, right: …}"
                            : "Write {unit: " + test.unit().id() + ", value: …}");
            return List.of();
        }
        return unitFits(node) ? (test.sided() ? sides(node) : one(node, Optional.empty())) : List.of();
    }

    private boolean unitFits(YamlNode node) {
        Optional<String> unit = node.text("unit");
        if (unit.isEmpty()) {
            node.error(
                    problems,
                    "The unit of " + test.id() + " is missing",
                    "Write “unit: " + test.unit().id() + "”");
            return false;
        }
        if (!unit.get().equals(test.unit().id())) {
            node.get("unit")
                    .orElse(node)
                    .error(
                            problems,
                            "The unit of " + test.id() + " is " + test.unit().id() + ", not " + unit.get(),
                            "Write the value in " + test.unit().id() + " and “unit: "
                                    + test.unit().id() + "”");
            return false;
        }
        return true;
    }

    private List<Measurement> sides(YamlNode node) {
        if (node.has("value")) {
            node.get("value")
                    .orElse(node)
                    .error(
                            problems,
                            "The value of " + test.id() + " does not say which side it is",
                            "Write it under left or right");
            return List.of();
        }
        for (String key : node.keys()) {
            if (!Set.of("unit", "left", "right").contains(key)) {
                unknown(node, key, "unit, left, right");
            }
        }
        List<Measurement> found = new ArrayList<>();
        for (Side side : Side.values()) {
            node.get(side.id()).ifPresent(n -> found.addAll(one(n, Optional.of(side))));
        }
        return found;
    }

    private List<Measurement> one(YamlNode node, Optional<Side> side) {
        if (node.text().filter(NOT_TESTED::equals).isPresent()
                || node.text("value").filter(NOT_TESTED::equals).isPresent()) {
            return List.of();
        }
        if (side.isEmpty() && (node.has("left") || node.has("right"))) {
            node.get("left")
                    .or(() -> node.get("right"))
                    .orElse(node)
                    .error(
                            problems,
                            test.name() + " (" + test.id() + ") has no sides",
                            "Write one value under “value”");
            return List.of();
        }
        Norm norm = test.norm();
        Set<String> keys = new LinkedHashSet<>(VALUE_KEYS);
        keys.addAll(test.marks());
        if (norm instanceof Norm.Pair pair) {
            pair.parts().forEach(p -> keys.add(p.id()));
        }
        if (norm instanceof Norm.Count) {
            keys.addAll(Set.of("items", "questions"));
        }
        node.keys().stream()
                .filter(k -> !keys.contains(k))
                .forEach(k -> unknown(
                        node, k, String.join(", ", keys.stream().sorted().toList())));
        return List.of(measurement(node, side));
    }

    private Measurement measurement(YamlNode node, Optional<Side> side) {
        boolean painful = isPainful(node);
        Map<String, Double> parts = new LinkedHashMap<>();
        Map<String, Boolean> marks = new LinkedHashMap<>();
        for (String mark : test.marks()) {
            node.get(mark).ifPresent(n -> truth(n, mark).ifPresent(yes -> marks.put(mark, yes)));
        }
        Optional<Double> value = Optional.empty();
        if (test.norm() instanceof Norm.Pair pair) {
            for (Norm.Pair.Part part : pair.parts()) {
                Optional<YamlNode> number = node.get(part.id());
                if (number.isEmpty() && !painful) {
                    node.error(
                            problems,
                            "“" + part.id() + "” is missing in " + test.id(),
                            "Write both values, or not-tested");
                }
                number.flatMap(this::number).ifPresent(v -> parts.put(part.id(), v));
            }
        } else {
            Optional<YamlNode> number = node.isValue() ? Optional.of(node) : node.get("value");
            if (test.norm() instanceof Norm.Count count) {
                value = counted(node, count, marks, number.flatMap(this::number));
            } else if (number.isEmpty() && !painful) {
                node.error(problems, "There is no value of " + test.id() + " here", "Write a number, or not-tested");
            } else {
                value = number.flatMap(this::number);
            }
        }
        return new Measurement(
                test.id(), side, value, parts, bound(node), painful, marks, node.text("note"), date, node.line());
    }

    /** The count itself, or the number of yes among its items when all were looked at. */
    private Optional<Double> counted(
            YamlNode node, Norm.Count count, Map<String, Boolean> marks, Optional<Double> written) {
        answers(node, "questions", count.questions(), marks);
        answers(node, "items", count.items(), marks);
        long looked = count.items().stream().filter(marks::containsKey).count();
        long yes = count.items().stream()
                .filter(i -> Boolean.TRUE.equals(marks.get(i)))
                .count();
        boolean complete = looked == count.items().size();
        if (written.isPresent() && (yes > written.get() || (complete && yes != written.get()))) {
            node.error(
                    problems,
                    "The count of " + test.id() + " is written as "
                            + written.get().intValue() + ", but " + yes + " items say yes",
                    "Correct the value or the items");
        }
        if (written.isEmpty() && !node.has("value") && looked == 0 && !isPainful(node)) {
            node.error(problems, "There is no value of " + test.id() + " here", "Write a number, or not-tested");
        }
        return written.isEmpty() && complete ? Optional.of((double) yes) : written;
    }

    private void answers(YamlNode node, String key, List<String> known, Map<String, Boolean> marks) {
        Optional<YamlNode> answers = node.get(key);
        if (answers.isEmpty()) {
            return;
        }
        answers.get().entries().forEach((id, answer) -> {
            if (Ids.check(answer, id, known, "answer in " + test.id(), problems)) {
                truth(answer, id).ifPresent(yes -> marks.put(id, yes));
            }
        });
    }

    private Optional<Double> number(YamlNode node) {
        Optional<Double> number = node.number();
        if (number.isEmpty()) {
            node.error(
                    problems,
                    "The value of " + test.id() + " is no number",
                    "Write a number in " + test.unit().id() + ", or not-tested");
            return Optional.empty();
        }
        double value = number.get();
        if (value < test.lowest() || value > test.highest()) {
            node.error(
                    problems,
                    test.id() + " of " + Shown.number(value) + test.unit().suffix() + " cannot be true",
                    "Check sign and decimal point; it lies between " + Shown.number(test.lowest()) + " and "
                            + Shown.number(test.highest()) + ". Sign: "
                            + test.method().sign().english().replaceFirst("\\.$", ""));
            return Optional.empty();
        }
        if (BigDecimal.valueOf(value).remainder(test.step()).signum() != 0) {
            node.error(
                    problems,
                    test.id() + " of " + Shown.number(value) + " is finer than it can be measured",
                    "Round it to " + test.step().toPlainString() + test.unit().suffix());
            return Optional.empty();
        }
        return number;
    }

    private boolean isPainful(YamlNode node) {
        boolean stopped = node.get("stopped").flatMap(n -> truth(n, "stopped")).orElse(false);
        Optional<YamlNode> pain = node.get("pain");
        if (pain.isEmpty()) {
            return stopped;
        }
        Optional<Double> strength = pain.get().number();
        if (strength.isPresent()) {
            if (strength.get() < 0 || strength.get() > 10) {
                pain.get().error(problems, "Pain of " + Shown.number(strength.get()), "Write 0 to 10, or yes or no");
            }
            return stopped || strength.get() >= PAINFUL_FROM;
        }
        return truth(pain.get(), "pain").orElse(true) || stopped;
    }

    private Measurement.Bound bound(YamlNode node) {
        boolean more = node.get("or-more").flatMap(n -> truth(n, "or-more")).orElse(false);
        boolean less = node.get("or-less").flatMap(n -> truth(n, "or-less")).orElse(false);
        if (more && less) {
            node.error(problems, "A value cannot be “or more” and “or less”", "Keep one of the two");
        }
        return more ? Measurement.Bound.OR_MORE : less ? Measurement.Bound.OR_LESS : Measurement.Bound.EXACT;
    }

    private Optional<Boolean> truth(YamlNode node, String key) {
        Optional<Boolean> truth = node.truth();
        if (truth.isEmpty()) {
            node.error(problems, "“" + key + "” is neither yes nor no", "Write yes or no");
        }
        return truth;
    }

    private void unknown(YamlNode node, String key, String known) {
        node.get(key).orElse(node).error(problems, "“" + key + "” is not known in " + test.id(), "Known are: " + known);
    }
}
