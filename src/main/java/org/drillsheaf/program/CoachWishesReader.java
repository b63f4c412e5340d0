package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Phase;

/** Reads the {@code coach} part of a visit. What has an error is left out and told. */
public final class CoachWishesReader {
    private static final Set<String> KEYS = Set.of("weights", "pins", "doses", "order", "start", "declined");

    private final Set<String> goals;
    private final Set<String> drills;
    private final Problems problems;

    /**
     * @param goals ids of the goals
     * @param drills ids of the drills in the catalogue
     * @param problems takes everything that is wrong
     */
    public CoachWishesReader(Set<String> goals, Set<String> drills, Problems problems) {
        this.goals = Set.copyOf(goals);
        this.drills = Set.copyOf(drills);
        this.problems = problems;
    }

    public CoachWishes read(YamlNode coach) {
        for (String key : coach.keys()) {
            if (!KEYS.contains(key)) {
                coach.nearest("/" + key)
                        .error(problems, "“" + key + "” is not known here", "Use one of " + sorted(KEYS));
            }
        }
        List<CoachWishes.Weight> weights = new ArrayList<>();
        list(coach, "weights").forEach(n -> weight(n).ifPresent(weights::add));
        List<Pin> pins = new ArrayList<>();
        list(coach, "pins").forEach(n -> pin(n).ifPresent(pins::add));
        List<CoachWishes.DoseWish> doses = new ArrayList<>();
        list(coach, "doses").forEach(n -> dose(n).ifPresent(doses::add));
        List<CoachWishes.Order> order = new ArrayList<>();
        list(coach, "order").forEach(n -> order(n).ifPresent(order::add));
        Optional<CoachWishes.Start> start = coach.get("start").flatMap(this::start);
        return new CoachWishes(weights, pins, doses, order, start);
    }

    private List<YamlNode> list(YamlNode coach, String key) {
        Optional<YamlNode> node = coach.get(key);
        if (node.isPresent() && !node.get().isList()) {
            node.get().error(problems, "“" + key + "” is no list", "Write it as a list, one line each");
        }
        return node.map(YamlNode::items).orElse(List.of());
    }

    private Optional<CoachWishes.Weight> weight(YamlNode node) {
        Optional<Phase> phase = phase(node, true);
        Optional<String> goal = known(node, "goal", goals);
        Optional<Integer> weight = number(node, "weight", 0, 5);
        OptionalInt target = optional(node, "target", 0, 12);
        if (weight.isEmpty() && node.get("weight").isEmpty()) {
            node.error(problems, "The weight is missing", "Add a line “weight: 0” to “weight: 5”");
        }
        if (phase.isEmpty() || goal.isEmpty() || weight.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CoachWishes.Weight(phase.get(), goal.get(), weight.get(), target, reason(node)));
    }

    private Optional<Pin> pin(YamlNode node) {
        String kind = node.text("kind").orElse("");
        Optional<Pin.Kind> known = java.util.Arrays.stream(Pin.Kind.values())
                .filter(k -> k.id().equals(kind))
                .findFirst();
        if (known.isEmpty()) {
            node.error(problems, "There is no pin “" + kind + "”", "Use must-have, must-not-have or keep");
        }
        Optional<String> drill = known(node, "drill", drills);
        boolean wrongPhase = node.has("phase") && phase(node, false).isEmpty();
        if (known.isEmpty() || drill.isEmpty() || wrongPhase) {
            return Optional.empty();
        }
        return Optional.of(new Pin(known.get(), drill.get(), phase(node, false), reason(node)));
    }

    private Optional<CoachWishes.DoseWish> dose(YamlNode node) {
        Optional<String> drill = known(node, "drill", drills);
        if (drill.isEmpty() || node.has("phase") && phase(node, false).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CoachWishes.DoseWish(
                drill.get(),
                phase(node, false),
                optional(node, "sets", 1, 10),
                optional(node, "each", 1, 100),
                optional(node, "effort", 0, 6),
                reason(node)));
    }

    private Optional<CoachWishes.Order> order(YamlNode node) {
        Optional<Phase> phase = phase(node, true);
        List<String> wanted = node.texts("drills");
        for (String id : wanted) {
            if (!drills.contains(id)) {
                node.error(problems, "There is no drill “" + id + "”", "Use the id of a drill in the catalogue");
                return Optional.empty();
            }
        }
        return phase.map(p -> new CoachWishes.Order(p, wanted));
    }

    private Optional<CoachWishes.Start> start(YamlNode node) {
        return phase(node, true).map(p -> new CoachWishes.Start(p, reason(node)));
    }

    private Optional<Phase> phase(YamlNode node, boolean needed) {
        Optional<String> written = node.text("phase");
        Optional<Phase> phase = written.flatMap(Phase::of);
        if (phase.isEmpty() && (needed || written.isPresent())) {
            node.error(
                    problems,
                    written.map(w -> "There is no phase “" + w + "”").orElse("The phase is missing"),
                    "Use settle, restore, reference or integrate");
        }
        return phase;
    }

    private Optional<String> known(YamlNode node, String key, Set<String> ids) {
        String written = node.text(key).orElse("");
        if (ids.contains(written)) {
            return Optional.of(written);
        }
        node.error(problems, "There is no " + key + " “" + written + "”", "Use an id that the house has");
        return Optional.empty();
    }

    private Optional<Integer> number(YamlNode node, String key, int least, int most) {
        Optional<YamlNode> written = node.get(key);
        Optional<Integer> value = node.integer(key).filter(v -> v >= least && v <= most);
        if (written.isPresent() && value.isEmpty()) {
            written.get()
                    .error(
                            problems,
                            "“" + key + "” does not fit",
                            "Write a whole number from " + least + " to " + most);
        }
        return value;
    }

    private OptionalInt optional(YamlNode node, String key, int least, int most) {
        return number(node, key, least, most).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private String reason(YamlNode node) {
        return node.text("reason").orElse("");
    }

    private static String sorted(Set<String> words) {
        return String.join(", ", new java.util.TreeSet<>(words));
    }
}
