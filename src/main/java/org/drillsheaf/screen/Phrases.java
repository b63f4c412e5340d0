package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;
import org.drillsheaf.saying.Saying.Name;
import org.drillsheaf.screen.rule.Folding;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.Truth;

/** Says rules, with the values they rest on. */
record Phrases(Battery battery, ReadingFacts facts) {

    /** The rule and the values it rests on, for example {@code thigh drop limited on both sides (L −9°, R −11°)}. */
    Saying withValues(Rule rule, Optional<Side> thisSide) {
        return withValues(rule(rule, thisSide), values(rule, thisSide));
    }

    static Saying withValues(Saying words, Saying values) {
        return values.isEmpty()
                ? words
                : Saying.phrase("values.behind").with("words", words).with("values", values);
    }

    /** The same, saying whether it is so. */
    Saying withTruth(Rule rule, Truth truth, Optional<Side> thisSide) {
        Saying said = rule(rule, thisSide);
        Saying told =
                switch (truth) {
                    case TRUE -> said;
                    case FALSE -> Saying.phrase("truth.false").with("rule", said);
                    case UNKNOWN -> Saying.phrase("truth.unknown").with("rule", said);
                };
        return withValues(told, values(rule, thisSide));
    }

    Saying rule(Rule rule, Optional<Side> thisSide) {
        if (rule instanceof Rule.Named named) {
            return new Saying.Own(named.words(), sides(thisSide));
        } else if (rule instanceof Rule.All all) {
            return Saying.joined(Joint.AND, each(all.rules(), thisSide));
        } else if (rule instanceof Rule.Any any) {
            return Saying.joined(Joint.OR, each(any.rules(), thisSide));
        } else if (rule instanceof Rule.Not not) {
            return Saying.phrase("rule.not").with("rule", rule(not.rule(), thisSide));
        } else if (rule instanceof Rule.Count count) {
            return Saying.phrase("rule.at-least")
                    .with("count", count.atLeast())
                    .with("rules", Saying.joined(Joint.SEMICOLON, each(count.rules(), thisSide)));
        } else if (rule instanceof Rule.ForSides sides) {
            return Saying.phrase(sides.both() ? "rule.each-side" : "rule.one-side")
                    .with("rule", rule(sides.rule(), Optional.empty()));
        }
        return atom((Rule.Atom) rule, thisSide);
    }

    /** What takes the place of {@code {side}} and {@code {other}} in the words of a rule. */
    static Map<String, Saying> sides(Optional<Side> thisSide) {
        return Map.of(
                "side",
                Saying.name(Name.Kind.SIDE, thisSide.map(Side::id).orElse("one")),
                "other",
                Saying.name(Name.Kind.SIDE, thisSide.map(s -> s.opposite().id()).orElse("other")));
    }

    /** A name with its side, where it has one. */
    static Saying named(Saying name, Optional<Side> side) {
        return side.<Saying>map(
                        s -> Saying.phrase("name.side").with("name", name).with("side", side(s)))
                .orElse(name);
    }

    /** The same for one of two values of a test. */
    static Saying named(Saying test, Optional<Side> side, Optional<String> part) {
        Saying sided = named(test, side);
        return part.<Saying>map(p -> Saying.joined(Joint.COMMA, sided, Saying.name(Name.Kind.PART, p)))
                .orElse(sided);
    }

    static Saying side(Side side) {
        return Saying.name(Name.Kind.SIDE, side.id());
    }

    private List<Saying> each(List<Rule> rules, Optional<Side> thisSide) {
        return rules.stream().map(r -> rule(r, thisSide)).toList();
    }

    private Saying atom(Rule.Atom atom, Optional<Side> thisSide) {
        Saying statement = statement(atom, thisSide);
        Saying place = place(atom.place(), thisSide);
        return place.isEmpty() || atom.word() == Rule.Word.LESS
                ? statement
                : Saying.phrase("rule.at").with("rule", statement).with("place", place);
    }

    private Saying statement(Rule.Atom atom, Optional<Side> thisSide) {
        Saying name =
                switch (atom.word()) {
                    case HOLDS, OPEN -> Saying.name(Name.Kind.PRESENTATION, atom.subject());
                    case OBSERVED -> Saying.name(Name.Kind.OBSERVED, atom.subject());
                    default -> test(atom);
                };
        Saying.Phrase phrase = Saying.phrase("rule." + key(atom));
        return switch (atom.word()) {
            case OBSERVED -> name;
            case NEW_PAIN -> phrase;
            case AGE -> phrase.with("number", atom.comparison().number());
            case LESS -> phrase.with("what", name).with("place", place(atom.place(), thisSide));
            case VALUE, WRITTEN -> phrase.with("what", name).with("number", number(atom));
            default -> phrase.with("what", name);
        };
    }

    /** A mark that is there is only named; values and ages are compared one way or the other. */
    private static String key(Rule.Atom atom) {
        String word =
                switch (atom.word()) {
                    case MARKED, NOTED -> "marked";
                    case VALUE, WRITTEN -> "value";
                    default -> atom.word().name().toLowerCase(Locale.ROOT).replace('_', '-');
                };
        return !atom.comparison().isGiven()
                ? word
                : word + (atom.comparison().sign().equals(">=") ? ".at-least" : ".at-most");
    }

    private static Saying test(Rule.Atom atom) {
        Saying test = Saying.name(Name.Kind.TEST, atom.subject());
        return atom.part()
                .<Saying>map(p -> Saying.phrase("rule.part").with("test", test).with("part", part(atom, p)))
                .orElse(test);
    }

    private static Saying part(Rule.Atom atom, String part) {
        boolean isMark = atom.word() == Rule.Word.MARKED || atom.word() == Rule.Word.NOTED;
        return Saying.name(isMark ? Name.Kind.MARK : Name.Kind.PART, part);
    }

    private Saying number(Rule.Atom atom) {
        double number = atom.comparison().number();
        return battery.test(atom.subject()).map(t -> t.unit().amount(number)).orElse(Saying.amount(number, ""));
    }

    private Saying place(Rule.Place place, Optional<Side> thisSide) {
        return switch (place) {
            case NONE -> Saying.NOTHING;
            case LEFT -> on(Side.LEFT);
            case RIGHT -> on(Side.RIGHT);
            case BOTH, EITHER -> Saying.phrase("place." + place.name().toLowerCase(Locale.ROOT));
            case THIS -> thisSide.map(Phrases::on).orElse(Saying.phrase("place.this"));
            case OTHER -> thisSide.map(Side::opposite).map(Phrases::on).orElse(Saying.phrase("place.other"));
            case FIRST -> Saying.phrase("place.first").with("place", on(facts.expectedFirst()));
            case LAST -> on(facts.expectedFirst().opposite());
        };
    }

    private static Saying on(Side side) {
        return Saying.phrase("place." + side.id());
    }

    /** Values of all tests that a rule speaks of. */
    Saying values(Rule rule, Optional<Side> thisSide) {
        Set<String> tests = new LinkedHashSet<>();
        Folding.atoms(rule).forEach(a -> tests.add(a.subject()));
        List<String> known =
                tests.stream().filter(t -> battery.test(t).isPresent()).toList();
        return Saying.joined(
                Joint.SEMICOLON,
                known.stream()
                        .map(test -> known.size() == 1
                                ? values(test)
                                : Saying.phrase("values.of")
                                        .with("test", Saying.name(Name.Kind.TEST, test))
                                        .with("values", values(test)))
                        .toList());
    }

    private Saying values(String test) {
        List<Saying> places = new ArrayList<>();
        facts.findings().getOrDefault(test, Map.of()).forEach((side, finding) -> {
            Saying value = finding.values().isEmpty() ? finding.kind().words() : finding.values();
            Saying remark =
                    switch (finding.kind()) {
                        case AT_THE_LINE, PAINFUL ->
                            finding.values().isEmpty()
                                    ? Saying.NOTHING
                                    : finding.kind().words();
                        case NOT_TESTED ->
                            finding.values().isEmpty() ? Saying.NOTHING : Saying.phrase("finding.does-not-count");
                        case FULL ->
                            finding.beyond().isUnknown() ? Saying.phrase("finding.perhaps-beyond") : Saying.NOTHING;
                        default -> Saying.NOTHING;
                    };
            Saying told = Saying.joined(Joint.COMMA, value, remark);
            places.add(side.<Saying>map(s -> Saying.phrase("values." + s.id()).with("value", told))
                    .orElse(told));
        });
        return places.isEmpty() ? FindingKind.NOT_TESTED.words() : Saying.joined(Joint.COMMA, places);
    }
}
