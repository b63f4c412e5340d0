package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Side;
import org.drillsheaf.screen.rule.Folding;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.Truth;

/**
 * Says rules in words, with the values they rest on.
 *
 * @param names name of every presentation by id
 */
record Phrases(Battery battery, Map<String, String> names, ReadingFacts facts) {

    /** The rule and the values it rests on, for example {@code thigh drop limited on both sides (L −9°, R −11°)}. */
    String withValues(Rule rule, Optional<Side> thisSide) {
        String values = values(rule, thisSide);
        return rule(rule, thisSide) + (values.isEmpty() ? "" : " (" + values + ")");
    }

    /** The same, saying whether it is so. */
    String withTruth(Rule rule, Truth truth, Optional<Side> thisSide) {
        String end =
                switch (truth) {
                    case TRUE -> "";
                    case FALSE -> ": not so";
                    case UNKNOWN -> ": not known";
                };
        String values = values(rule, thisSide);
        return rule(rule, thisSide) + end + (values.isEmpty() ? "" : " (" + values + ")");
    }

    String rule(Rule rule, Optional<Side> thisSide) {
        if (rule instanceof Rule.Named named) {
            return sides(named.words(), thisSide);
        } else if (rule instanceof Rule.All all) {
            return joined(all.rules(), " and ", thisSide);
        } else if (rule instanceof Rule.Any any) {
            return joined(any.rules(), " or ", thisSide);
        } else if (rule instanceof Rule.Not not) {
            return "not: " + rule(not.rule(), thisSide);
        } else if (rule instanceof Rule.Count count) {
            return "at least " + count.atLeast() + " of: " + joined(count.rules(), "; ", thisSide);
        } else if (rule instanceof Rule.ForSides sides) {
            return (sides.both() ? "on each side: " : "on one side: ") + rule(sides.rule(), Optional.empty());
        }
        return atom((Rule.Atom) rule, thisSide);
    }

    static String sides(String words, Optional<Side> thisSide) {
        return words.replace("{side}", thisSide.map(Side::id).orElse("one side"))
                .replace("{other}", thisSide.map(s -> s.opposite().id()).orElse("other"));
    }

    private String joined(List<Rule> rules, String between, Optional<Side> thisSide) {
        return rules.stream().map(r -> rule(r, thisSide)).collect(Collectors.joining(between));
    }

    private String atom(Rule.Atom atom, Optional<Side> thisSide) {
        String name = battery.test(atom.subject())
                .map(t -> Shown.lowerFirst(t.name()))
                .orElse(names.getOrDefault(atom.subject(), atom.subject()));
        String part = atom.part().map(p -> ", " + p).orElse("");
        String number = atom.comparison().isGiven()
                ? (atom.comparison().sign().equals(">=") ? " at least " : " at most ")
                        + battery.test(atom.subject())
                                .map(t -> Shown.value(atom.comparison().number(), t.unit()))
                                .orElse(Shown.number(atom.comparison().number()))
                : "";
        String place = place(atom.place(), thisSide);
        return switch (atom.word()) {
            case LIMITED -> name + " limited" + place;
            case FREE -> name + " free" + place;
            case BEYOND -> name + " beyond expected" + place;
            case WIDE -> name + " wide";
            case NARROW -> name + " narrow";
            case PAINFUL -> name + " painful" + place;
            case BARRED -> name + " barred" + place;
            case LESS -> name + " less" + place + " by a real change";
            case DIFFER -> name + ": the sides differ by a real change";
            case MARKED, NOTED -> name + part + place;
            case VALUE, WRITTEN -> name + part + number + place;
            case GAINED -> name + part + " better by a real change" + place;
            case LOST -> name + part + " worse by a real change" + place;
            case AGE -> "age" + number;
            case OBSERVED -> atom.subject().replace('-', ' ');
            case HOLDS -> name + " holds" + place;
            case OPEN -> name + " is open" + place;
            case NEW_PAIN -> "pain in a test that was free of pain before";
        };
    }

    private String place(Rule.Place place, Optional<Side> thisSide) {
        return switch (place) {
            case NONE -> "";
            case LEFT -> " on the left";
            case RIGHT -> " on the right";
            case BOTH -> " on both sides";
            case EITHER -> " on one side at least";
            case THIS -> thisSide.map(s -> " on the " + s.id()).orElse(" on that side");
            case OTHER -> thisSide.map(s -> " on the " + s.opposite().id()).orElse(" on the other side");
            case FIRST -> " on the " + facts.expectedFirst().id() + " (expected first)";
            case LAST -> " on the " + facts.expectedFirst().opposite().id();
        };
    }

    /** Values of all tests that a rule speaks of. */
    String values(Rule rule, Optional<Side> thisSide) {
        Set<String> tests = new LinkedHashSet<>();
        Folding.atoms(rule).forEach(a -> tests.add(a.subject()));
        List<String> known =
                tests.stream().filter(t -> battery.test(t).isPresent()).toList();
        Map<String, String> values = new LinkedHashMap<>();
        for (String test : known) {
            values.put(test, values(test));
        }
        boolean several = values.size() > 1;
        return values.entrySet().stream()
                .map(e -> several
                        ? Shown.lowerFirst(
                                        battery.test(e.getKey()).orElseThrow().name()) + " " + e.getValue()
                        : e.getValue())
                .collect(Collectors.joining("; "));
    }

    private String values(String test) {
        List<String> places = new ArrayList<>();
        facts.findings().getOrDefault(test, Map.of()).forEach((side, finding) -> {
            String letter = side.map(s -> s == Side.LEFT ? "L " : "R ").orElse("");
            String value = finding.values().isEmpty() ? finding.kind().words() : finding.values();
            String remark =
                    switch (finding.kind()) {
                        case AT_THE_LINE, PAINFUL ->
                            finding.values().isEmpty()
                                    ? ""
                                    : ", " + finding.kind().words();
                        case NOT_TESTED -> finding.values().isEmpty() ? "" : ", does not count";
                        case FULL -> finding.beyond().isUnknown() ? ", perhaps beyond" : "";
                        default -> "";
                    };
            places.add(letter + value + remark);
        });
        return places.isEmpty() ? FindingKind.NOT_TESTED.words() : String.join(", ", places);
    }
}
