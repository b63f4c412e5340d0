package org.drillsheaf.program;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.SayingYaml;

/** Reads a program that {@link ProgramYaml} wrote. */
public final class ProgramReader {

    /** A place that is not as it was written. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient YamlNode node;

        Unreadable(YamlNode node, String key) {
            super("“" + key + "” is missing or does not fit");
            this.node = node;
        }
    }

    private ProgramReader() {}

    /** @return empty when the file is not a program; the place then stands in {@code problems} */
    public static Optional<Program> read(YamlNode file, Problems problems) {
        try {
            return Optional.of(program(file));
        } catch (Unreadable e) {
            e.node.error(
                    problems,
                    java.util.Objects.requireNonNull(e.getMessage()),
                    "Build the program again; its file is not meant to be edited");
            return Optional.empty();
        }
    }

    private static Program program(YamlNode node) {
        List<PhasePlan> phases = each(node, "phases", ProgramReader::phase);
        if (phases.size() != Phase.values().length) {
            throw new Unreadable(node, "phases");
        }
        YamlNode proof = need(node, "proof");
        LocalDate date = node.date("date").orElseThrow(() -> new Unreadable(node, "date"));
        return new Program(
                text(node, "client"),
                date,
                phaseId(node, "start"),
                sayings(node, "start-because"),
                phases,
                new Proof(
                        cost(proof, "value"),
                        cost(proof, "bound"),
                        number(proof, "considered"),
                        number(proof, "subsets"),
                        number(proof, "ruled-out"),
                        proof.truth("stopped").orElse(false),
                        proof.truth("ties-settled").orElse(true)),
                node.texts("known"),
                each(node, "changes", ProgramReader::change),
                sayings(node, "remarks"));
    }

    private static ProgramChange change(YamlNode node) {
        return new ProgramChange(
                phaseId(node, "phase"),
                one(node, "kind", ProgramChange.Kind.values(), ProgramChange.Kind::id),
                text(node, "drill"),
                saying(need(node, "why"), "why"));
    }

    private static PhasePlan phase(YamlNode node) {
        return new PhasePlan(
                phaseId(node, "phase"),
                one(node, "standing", PhasePlan.Standing.values(), PhasePlan.Standing::id),
                each(node, "drills", ProgramReader::entry),
                number(node, "minutes"),
                number(node, "sessions-per-week"),
                each(node, "goals", ProgramReader::goal),
                sayings(node, "remarks"));
    }

    private static CoveredGoal goal(YamlNode node) {
        int weight = number(node, "weight");
        int target = number(node, "target");
        if (weight < 0 || target < 0) {
            throw new Unreadable(node, "weight");
        }
        return new CoveredGoal(
                new GoalNeed(text(node, "goal"), weight, target, sayings(node, "because")), number(node, "covered"));
    }

    private static Entry entry(YamlNode node) {
        YamlNode dose = need(node, "dose");
        Optional<Side> side =
                node.has("side") ? Optional.of(one(node, "side", Side.values(), Side::id)) : Optional.empty();
        Optional<Pin.Kind> pinned = node.has("pinned")
                ? Optional.of(one(node, "pinned", Pin.Kind.values(), Pin.Kind::id))
                : Optional.empty();
        List<Served> serves =
                each(node, "serves", n -> new Served(text(n, "goal"), number(n, "strength"), number(n, "adds")));
        return new Entry(
                text(node, "drill"),
                number(node, "revision"),
                text(node, "sha-256"),
                node.texts("variants"),
                side,
                new AssignedDose(
                        number(dose, "sets"),
                        text(dose, "count"),
                        number(dose, "each"),
                        number(dose, "hold-seconds"),
                        number(dose, "rest-seconds"),
                        number(dose, "effort"),
                        text(dose, "sides")),
                number(node, "minutes"),
                node.truth("known").orElseThrow(() -> new Unreadable(node, "known")),
                pinned,
                serves,
                GoalReason.told(sayings(node, "because"), serves),
                each(node, "alternatives", n -> new Alternative(text(n, "drill"), cost(n, "cost"))));
    }

    private static Cost cost(YamlNode node, String key) {
        YamlNode cost = need(node, key);
        return new Cost(
                number(cost, "coverage"),
                number(cost, "minutes"),
                number(cost, "changes"),
                number(cost, "position-changes"),
                number(cost, "repeats"),
                number(cost, "equipment"));
    }

    private static List<Saying> sayings(YamlNode node, String key) {
        return node.get(key).map(YamlNode::items).orElse(List.of()).stream()
                .map(n -> saying(n, key))
                .toList();
    }

    private static Saying saying(YamlNode node, String key) {
        return SayingYaml.read(node).orElseThrow(() -> new Unreadable(node, key));
    }

    private static <T> List<T> each(YamlNode node, String key, Function<YamlNode, T> read) {
        List<T> all = new ArrayList<>();
        need(node, key).items().forEach(n -> all.add(read.apply(n)));
        return all;
    }

    private static <T> T one(YamlNode node, String key, T[] values, Function<T, String> id) {
        String written = text(node, key);
        return Arrays.stream(values)
                .filter(v -> id.apply(v).equals(written))
                .findFirst()
                .orElseThrow(() -> new Unreadable(node, key));
    }

    private static Phase phaseId(YamlNode node, String key) {
        return Phase.of(text(node, key)).orElseThrow(() -> new Unreadable(node, key));
    }

    private static YamlNode need(YamlNode node, String key) {
        return node.get(key).orElseThrow(() -> new Unreadable(node, key));
    }

    private static String text(YamlNode node, String key) {
        return node.text(key).orElseThrow(() -> new Unreadable(node, key));
    }

    private static int number(YamlNode node, String key) {
        return node.integer(key).orElseThrow(() -> new Unreadable(node, key));
    }
}
