package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Vec3;

/** Reads {@code marks}: a list of maps with an id and one kind of mark. */
final class MarkReader {
    private static final List<String> KINDS = List.of("arrow", "swing", "pad", "angle", "breath");

    private final NodeNumbers numbers;
    private final BodyWords words;

    MarkReader(NodeNumbers numbers, BodyWords words) {
        this.numbers = numbers;
        this.words = words;
    }

    private Problems problems() {
        return numbers.problems();
    }

    List<Mark> read(YamlNode list) {
        List<Mark> marks = new ArrayList<>();
        int number = 0;
        for (YamlNode item : list.items()) {
            number++;
            Optional<String> kind = KINDS.stream().filter(item::has).findFirst();
            if (kind.isEmpty()) {
                item.error(
                        problems(),
                        "This mark is of no known kind",
                        "Write for example {id: reach, arrow: {at: tip.R, dir: [1, 0, 0], len: 0.1}}; kinds: "
                                + String.join(", ", KINDS));
                continue;
            }
            numbers.onlyKeys(item, "a mark", List.of("id", "views", kind.get()));
            String id = item.text("id").orElse(kind.get() + "-" + number);
            if (marks.stream().anyMatch(m -> m.id().equals(id))) {
                item.error(problems(), "Two marks are called “" + id + "”", "Give each mark its own id");
            }
            read(kind.get(), id, item).ifPresent(marks::add);
        }
        return marks;
    }

    private Optional<Mark> read(String kind, String id, YamlNode item) {
        YamlNode body = item.get(kind).orElseThrow();
        List<String> views = item.has("views") ? item.texts("views") : body.texts("views");
        return switch (kind) {
            case "arrow" -> arrow(id, body, views);
            case "swing" -> swing(id, body, views);
            case "pad" -> pad(id, body, views);
            case "angle" -> angle(id, body, views);
            default -> breath(id, body, views);
        };
    }

    private Optional<String> at(YamlNode body, String kind) {
        Optional<YamlNode> at = body.get("at");
        if (at.isEmpty()) {
            body.error(problems(), "This " + kind + " has no “at”", "Add at: with a body point such as knee.R");
        }
        return at.flatMap(words::point);
    }

    private double millimetres(YamlNode body, String key, double otherwise) {
        return body.get(key).flatMap(n -> numbers.number(n, key, .5, 60)).orElse(otherwise);
    }

    private static String label(YamlNode body) {
        return body.text("label").orElse("");
    }

    private Optional<Mark> arrow(String id, YamlNode body, List<String> views) {
        numbers.onlyKeys(body, "an arrow", List.of("at", "dir", "len", "gap", "mode", "label", "views", "shift", "w"));
        Optional<String> at = at(body, "arrow");
        Optional<Vec3> direction = body.get("dir").flatMap(n -> numbers.direction(n, "dir"));
        if (!body.has("dir")) {
            body.error(problems(), "This arrow has no “dir”", "Add a direction such as dir: [1, 0, 0]");
        }
        if (at.isEmpty() || direction.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Mark.Arrow(
                id,
                at.get(),
                direction.get(),
                body.get("len").flatMap(n -> numbers.number(n, "len", .01, 1)).orElse(.12),
                body.get("gap").flatMap(n -> numbers.number(n, "gap", -.5, .5)).orElse(.02),
                body.text("mode").orElse("away").equals("toward"),
                label(body),
                views));
    }

    private Optional<Mark> swing(String id, YamlNode body, List<String> views) {
        numbers.onlyKeys(body, "a swing", List.of("about", "at", "k", "inset", "label", "views"));
        Optional<String> about = body.get("about").flatMap(words::point);
        Optional<String> at = at(body, "swing");
        if (!body.has("about")) {
            body.error(problems(), "This swing has no “about”", "Add about: with the joint it turns around");
        }
        if (about.isEmpty() || at.isEmpty()) {
            return Optional.empty();
        }
        double share = body.get("k").flatMap(n -> numbers.number(n, "k", .1, 2)).orElse(.86);
        return Optional.of(new Mark.Swing(id, about.get(), at.get(), share, label(body), views));
    }

    private Optional<Mark> pad(String id, YamlNode body, List<String> views) {
        numbers.onlyKeys(body, "a pad", List.of("at", "w", "along", "views"));
        boolean upright =
                List.of("v", "y", "vertical").contains(body.text("along").orElse("h"));
        return at(body, "pad").map(at -> new Mark.Pad(id, at, millimetres(body, "w", 5), upright, views));
    }

    /** {@code {at: knee.R, zero: [0, -1, 0], to: ankle.R}}, or {@code {at: knee.R}} for the joint's own angle. */
    private Optional<Mark> angle(String id, YamlNode body, List<String> views) {
        numbers.onlyKeys(body, "an angle", List.of("at", "zero", "to", "minus", "r", "views"));
        if (body.has("zero") != body.has("to")) {
            body.error(
                    problems(),
                    "This angle has only one arm",
                    "Write both zero: with a direction and to: with a body point, or neither");
        }
        Optional<Vec3> zero = body.get("zero").flatMap(n -> numbers.direction(n, "zero"));
        Optional<String> to = body.get("to").flatMap(words::point);
        boolean minus = body.get("minus").flatMap(YamlNode::truth).orElse(false);
        Optional<Mark.Arms> arms = zero.flatMap(z -> to.map(t -> new Mark.Arms(z, t, minus ? -1 : 1)));
        return at(body, "angle").map(at -> new Mark.AngleArc(id, at, arms, millimetres(body, "r", 7.5), views));
    }

    private Optional<Mark> breath(String id, YamlNode body, List<String> views) {
        numbers.onlyKeys(body, "a breath", List.of("way", "label", "views"));
        String way = body.text("way").orElse("out");
        if (!way.equals("in") && !way.equals("out")) {
            body.error(problems(), "“" + way + "” is no way to breathe", "Use in or out");
        }
        return Optional.of(new Mark.Breath(id, !way.equals("in"), label(body), views));
    }
}
