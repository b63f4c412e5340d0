package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Vec3;

/** Reads {@code props}: a list of maps with one key, the kind, and its sizes and place. */
final class PropReader {
    private static final List<String> PLACE_KEYS =
            List.of("id", "faces", "at", "half", "axis", "between", "offset", "a", "b");

    private final NodeNumbers numbers;
    private final BodyWords words;

    PropReader(NodeNumbers numbers, BodyWords words) {
        this.numbers = numbers;
        this.words = words;
    }

    private Problems problems() {
        return numbers.problems();
    }

    List<Prop> read(YamlNode list) {
        List<Prop> props = new ArrayList<>();
        for (YamlNode item : list.items()) {
            if (item.isValue()) {
                readOne(item.text().orElse(""), item, props);
            }
            item.entries().forEach((kind, node) -> readOne(kind, node, props));
        }
        return props;
    }

    private void readOne(String word, YamlNode node, List<Prop> props) {
        Optional<PropKind> kind = PropKind.of(word);
        if (kind.isEmpty()) {
            node.error(
                    problems(),
                    "There is no prop “" + word + "”",
                    "Use one of: "
                            + String.join(
                                    ", ",
                                    java.util.Arrays.stream(PropKind.values())
                                            .map(PropKind::id)
                                            .toList()));
            return;
        }
        String wanted = node.text("id").orElse(kind.get().id());
        String id = wanted;
        if (props.stream().anyMatch(p -> p.id().equals(wanted))) {
            if (node.has("id")) {
                node.error(problems(), "Two props are called “" + wanted + "”", "Give each its own id");
            }
            id = wanted + "-" + (props.size() + 1);
        }
        List<String> known = new ArrayList<>(PLACE_KEYS);
        known.addAll(kind.get().sizes().keySet());
        known.addAll(List.of("x", "z", "tilt"));
        numbers.onlyKeys(node, "a " + kind.get().id(), known.stream().distinct().toList());
        props.add(new Prop(kind.get(), id, sizes(node), facing(node), place(kind.get(), node), node.line()));
    }

    private Map<String, Double> sizes(YamlNode node) {
        Map<String, Double> sizes = new HashMap<>();
        node.entries().forEach((key, value) -> {
            if (key.equals("legs")) {
                sizes.put(key, value.truth().orElse(false) ? 1. : 0.);
            } else if (key.equals("half") && value.isList()) {
                numbers.vector(value, key).ifPresent(v -> {
                    sizes.put("x", Math.abs(v.x()));
                    sizes.put("y", Math.abs(v.y()));
                    sizes.put("z", Math.abs(v.z()));
                });
            } else if (key.equals("tilt")) {
                numbers.number(value, key, -180, 180).ifPresent(v -> sizes.put(key, v));
            } else if (key.equals("half") || !PLACE_KEYS.contains(key)) {
                numbers.length(value, key).ifPresent(v -> sizes.put(key, v));
            }
        });
        return sizes;
    }

    private Vec3 facing(YamlNode node) {
        Optional<YamlNode> faces = node.get("faces");
        String text = faces.flatMap(YamlNode::text).orElse("+x");
        switch (text) {
            case "+x", "x":
                return Vec3.X;
            case "-x":
                return Vec3.X.times(-1);
            case "+z", "z":
                return Vec3.Z;
            case "-z":
                return Vec3.Z.times(-1);
            default:
                faces.get().error(problems(), "“" + text + "” is no direction to face", "Use +x, -x, +z or -z");
                return Vec3.X;
        }
    }

    private Prop.Place place(PropKind kind, YamlNode node) {
        if (kind.isFurniture()) {
            return new Prop.Place.InRoom();
        }
        Vec3 axis = node.get("axis")
                .flatMap(n -> numbers.direction(n, "axis"))
                .orElse(kind == PropKind.TOWEL || kind == PropKind.STICK || kind == PropKind.RAIL ? Vec3.Z : Vec3.Y);
        Vec3 offset =
                node.get("offset").flatMap(n -> numbers.vector(n, "offset")).orElse(Vec3.ZERO);
        if (node.has("a") && node.has("b")) {
            Optional<Prop.End> from = node.get("a").flatMap(this::end);
            Optional<Prop.End> to = node.get("b").flatMap(this::end);
            return from.isPresent() && to.isPresent()
                    ? new Prop.Place.Between(from.get(), to.get())
                    : new Prop.Place.InRoom();
        }
        Optional<YamlNode> at = node.get("at");
        if (at.isPresent() && at.get().isList()) {
            return new Prop.Place.At(numbers.vector(at.get(), "at").orElse(Vec3.ZERO), axis);
        }
        Optional<YamlNode> between = node.get("between").or(() -> at);
        if (between.isPresent()) {
            List<String> points = new ArrayList<>();
            List<YamlNode> nodes = between.get().isList() ? between.get().items() : List.of(between.get());
            nodes.forEach(n -> words.point(n).ifPresent(points::add));
            return points.isEmpty() ? new Prop.Place.InRoom() : new Prop.Place.OnBody(points, offset, axis);
        }
        return otherwise(kind, node, offset, axis);
    }

    /** Where a held or propped thing is when the author did not say. */
    private Prop.Place otherwise(PropKind kind, YamlNode node, Vec3 offset, Vec3 axis) {
        switch (kind) {
            case BALL, CUSHION:
                return new Prop.Place.OnBody(List.of("knees"), offset, axis);
            case STRAW:
                return new Prop.Place.OnBody(List.of("mouth"), offset, axis);
            case STICK:
                return new Prop.Place.Between(new Prop.End.OnBody("palm.L"), new Prop.End.OnBody("palm.R"));
            case BAG:
                return new Prop.Place.OnBody(List.of("tip.R"), new Vec3(0, -.07, 0), axis);
            default:
                node.error(
                        problems(),
                        "Nobody says where the " + kind.id() + " is",
                        "Write at: [x, y, z] or at: a body point; for a band, rail or stick a: and b:");
                return new Prop.Place.At(Vec3.ZERO, axis);
        }
    }

    private Optional<Prop.End> end(YamlNode node) {
        if (node.isList()) {
            return numbers.vector(node, "end").map(Prop.End.InRoom::new);
        }
        return words.point(node).map(Prop.End.OnBody::new);
    }
}
