package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Vec3;

/** Reads {@code contacts}: touch, flat and place. */
final class ContactReader {
    private static final double PRESS = .006;

    private final NodeNumbers numbers;
    private final BodyWords words;
    /** Names of what can be touched, and of planes among them. */
    private final Set<String> surfaces;

    private final Set<String> planes;

    ContactReader(NodeNumbers numbers, BodyWords words, Set<String> surfaces, Set<String> planes) {
        this.numbers = numbers;
        this.words = words;
        this.surfaces = surfaces;
        this.planes = planes;
    }

    private Problems problems() {
        return numbers.problems();
    }

    List<Contact> read(YamlNode list) {
        List<Contact> contacts = new ArrayList<>();
        for (YamlNode item : list.items()) {
            if (item.has("touch")) {
                numbers.onlyKeys(item, "a touch", List.of("touch", "plane", "on", "press", "weight"));
                touch(item, contacts);
            } else if (item.has("flat")) {
                numbers.onlyKeys(item, "a flat contact", List.of("flat", "plane", "on"));
                flat(item, contacts);
            } else if (item.has("place")) {
                numbers.onlyKeys(
                        item, "a place", List.of("place", "x", "y", "z", "xyz", "to", "on", "offset", "weight"));
                place(item, contacts);
            } else {
                item.error(
                        problems(),
                        "This contact is none of touch, flat, place",
                        "Write for example {touch: feet, plane: floor} or {place: heel.R, x: 0.16}");
            }
        }
        refuseCycles(list, contacts);
        return contacts;
    }

    private double weight(YamlNode item) {
        return item.get("weight")
                .flatMap(n -> numbers.number(n, "weight", .01, 100))
                .orElse(1.);
    }

    private Optional<String> surface(YamlNode item, Set<String> known) {
        Optional<YamlNode> node = item.get("plane").or(() -> item.get("on"));
        Optional<String> word = node.flatMap(YamlNode::text);
        if (word.isEmpty()) {
            item.error(problems(), "This contact does not say on what", "Add plane: with one of " + listed(known));
            return Optional.empty();
        }
        boolean isBody = known == surfaces && !Regions.singles(word.get()).isEmpty();
        if (!known.contains(word.get()) && !isBody) {
            node.get()
                    .error(
                            problems(),
                            "There is no surface “" + word.get() + "” in this pose",
                            "Add the prop, or use one of " + listed(known));
            return Optional.empty();
        }
        return word;
    }

    private static String listed(Set<String> names) {
        return String.join(", ", names.stream().sorted().toList());
    }

    private void touch(YamlNode item, List<Contact> contacts) {
        String word = item.text("touch").orElse("");
        List<String> regions = Regions.singles(word);
        if (regions.isEmpty()) {
            item.error(
                    problems(),
                    "There is no body region “" + word + "”",
                    "Use one of: " + String.join(", ", Regions.words()));
            return;
        }
        Optional<String> on = surface(item, surfaces);
        double press = item.get("press")
                .flatMap(n -> numbers.number(n, "press", -.2, .05))
                .orElse(PRESS);
        for (String region : regions) {
            on.ifPresent(surface -> contacts.add(new Contact.Touch(region, surface, press, weight(item), item.line())));
        }
    }

    private void flat(YamlNode item, List<Contact> contacts) {
        String word = item.text("flat").orElse("");
        Optional<String> plane = surface(item, planes);
        List<Side> sides =
                switch (word) {
                    case "feet" -> List.of(Side.RIGHT, Side.LEFT);
                    case "foot.R" -> List.of(Side.RIGHT);
                    case "foot.L" -> List.of(Side.LEFT);
                    default -> List.of();
                };
        if (sides.isEmpty()) {
            item.error(problems(), "“" + word + "” cannot lie flat", "Use feet, foot.R or foot.L");
        }
        plane.ifPresent(p -> sides.forEach(side -> contacts.add(new Contact.Flat(side, p, item.line()))));
    }

    private void place(YamlNode item, List<Contact> contacts) {
        Optional<String> point = item.get("place").flatMap(words::point);
        Optional<Contact.Target> target = target(item);
        if (target.isEmpty()) {
            return;
        }
        point.ifPresent(p -> contacts.add(new Contact.Place(p, target.get(), weight(item), item.line())));
    }

    private Optional<Contact.Target> target(YamlNode item) {
        Optional<YamlNode> to = item.get("to").or(() -> item.get("on"));
        if (to.isPresent()) {
            Vec3 offset =
                    item.get("offset").flatMap(n -> numbers.vector(n, "offset")).orElse(Vec3.ZERO);
            return words.point(to.get()).map(p -> new Contact.Target.Body(p, offset));
        }
        if (item.has("xyz")) {
            return item.get("xyz")
                    .flatMap(n -> numbers.vector(n, "xyz"))
                    .map(v -> new Contact.Target.Room(Optional.of(v.x()), Optional.of(v.y()), Optional.of(v.z())));
        }
        if (!item.has("x") && !item.has("y") && !item.has("z")) {
            item.error(
                    problems(), "This place says nowhere", "Add x, y or z, xyz: [x, y, z], or to: another body point");
            return Optional.empty();
        }
        return Optional.of(new Contact.Target.Room(
                item.get("x").flatMap(n -> numbers.length(n, "x")),
                item.get("y").flatMap(n -> numbers.length(n, "y")),
                item.get("z").flatMap(n -> numbers.length(n, "z"))));
    }

    /** A point may not be placed, by way of others, relative to itself. */
    private void refuseCycles(YamlNode list, List<Contact> contacts) {
        Map<String, Set<String>> leads = new HashMap<>();
        for (Contact contact : contacts) {
            if (contact instanceof Contact.Place place && place.target() instanceof Contact.Target.Body body) {
                leads.computeIfAbsent(place.point(), p -> new HashSet<>()).add(body.point());
            }
        }
        for (Contact contact : contacts) {
            if (contact instanceof Contact.Place place
                    && reaches(leads, place.point(), place.point(), new HashSet<>())) {
                problems()
                        .error(
                                list.file(),
                                place.line(),
                                "“" + place.point() + "” is placed relative to itself",
                                "Break the circle: give one of these points a place in the room (x, y, z)");
                return;
            }
        }
    }

    private static boolean reaches(Map<String, Set<String>> leads, String from, String goal, Set<String> seen) {
        for (String next : leads.getOrDefault(from, Set.of())) {
            if (next.equals(goal) || seen.add(next) && reaches(leads, next, goal, seen)) {
                return true;
            }
        }
        return false;
    }
}
