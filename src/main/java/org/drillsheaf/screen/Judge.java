package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.rule.Folding;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.Truth;

/** Works out what the findings say about one presentation on one side. */
final class Judge {
    private final ReadingFacts facts;
    private final Phrases phrases;
    private final Presentation presentation;
    private final Optional<Side> side;
    private final Rule supported;
    private final Rule refuted;
    private final Outcomes outcomes;
    private final Chances chances;

    Judge(Presentation presentation, Optional<Side> side, ReadingFacts facts, Phrases phrases) {
        this.presentation = presentation;
        this.side = side;
        this.facts = facts;
        this.phrases = phrases;
        Rule required = new Rule.All(presentation.required());
        Rule against = new Rule.Count(presentation.againstNeeded(), OptionalInt.empty(), presentation.against());
        Rule kept = new Rule.Any(presentation.openWhen());
        Rule holds = plain(new Rule.All(List.of(required, new Rule.Not(against))));
        Rule fails = plain(new Rule.All(List.of(new Rule.Not(required), new Rule.Not(kept))));
        Set<Rule.Atom> read = new LinkedHashSet<>(Folding.atoms(holds));
        read.addAll(Folding.atoms(fails));
        this.supported = known(holds);
        this.refuted = known(fails);
        this.outcomes = new Outcomes(facts, read);
        this.chances = new Chances(outcomes);
    }

    private Rule plain(Rule rule) {
        return Folding.plain(rule, side, facts.expectedFirst());
    }

    private Rule known(Rule plain) {
        return Folding.fold(plain, a -> Optional.of(facts.truth(a, Folding.side(a))));
    }

    Presentation presentation() {
        return presentation;
    }

    Optional<Side> side() {
        return side;
    }

    /** Held when the required rules are true and too little can speak against it; open unless it is known to fail. */
    Verdict verdict() {
        return verdict(supported, refuted);
    }

    private static Verdict verdict(Rule supported, Rule refuted) {
        if (supported.equals(Rule.TRUE)) {
            return Verdict.SUPPORTED;
        }
        return refuted.equals(Rule.TRUE) ? Verdict.NOT_SUPPORTED : Verdict.OPEN;
    }

    PresentationReading reading() {
        Verdict verdict = verdict();
        boolean mixed = verdict == Verdict.OPEN && chances.of(supported) == 0 && chances.of(refuted) == 0;
        boolean clear = verdict == Verdict.SUPPORTED
                && presentation.clearWhen().truth(facts, side).isTrue();
        return new PresentationReading(
                presentation,
                side,
                verdict,
                mixed,
                false,
                clear,
                evidence(),
                verdict == Verdict.OPEN ? openBecause(mixed) : List.of());
    }

    /** Tests of which an unknown finding still matters here. */
    Set<String> openTests() {
        Set<String> tests = new LinkedHashSet<>();
        Folding.atoms(supported).forEach(a -> tests.add(a.subject()));
        Folding.atoms(refuted).forEach(a -> tests.add(a.subject()));
        return tests;
    }

    /**
     * True when one way in which this one test could come out would make the name hold. Never through pain; a presentation may
     * also refuse to lean on what was not taken.
     */
    boolean couldHoldAfter(String testId) {
        return outcomes
                .of(
                        testId,
                        f -> f.kind() != FindingKind.PAINFUL
                                && (presentation.leansOnUntaken() || f.kind() != FindingKind.NOT_TESTED))
                .stream()
                .anyMatch(way -> Chances.after(supported, way, testId).equals(Rule.TRUE));
    }

    /** Expected drop of uncertainty about this name when the test is taken where it may be taken. Bits. */
    double gain(String testId, java.util.function.Predicate<Finding> visible) {
        Map<List<Object>, double[]> groups = new java.util.LinkedHashMap<>();
        List<Outcomes.Outcome> ways = outcomes.of(testId, f -> true);
        for (Outcomes.Outcome way : ways) {
            double holds = chances.of(Chances.after(supported, way, testId));
            double fails = chances.of(Chances.after(refuted, way, testId));
            double[] group = groups.computeIfAbsent(seen(way, testId, visible), k -> new double[3]);
            group[0] += holds;
            group[1] += fails;
            group[2] += Math.max(0, 1 - holds - fails);
        }
        return InformationGain.gain(groups.values().toArray(double[][]::new));
    }

    /** What a coach would see of an outcome: nothing of a place that is painful or barred. */
    private List<Object> seen(Outcomes.Outcome way, String testId, java.util.function.Predicate<Finding> visible) {
        List<Object> seen = new ArrayList<>();
        boolean all = true;
        for (Finding finding : facts.findings().getOrDefault(testId, Map.of()).values()) {
            if (visible.test(finding)) {
                seen.add(java.util.Objects.requireNonNullElse(way.states().get(finding.side()), "none"));
                seen.add(way.marks().getOrDefault(finding.side(), Map.of()));
            } else {
                all = false;
            }
        }
        if (all) {
            seen.add(way.relation());
        }
        return seen;
    }

    private List<Evidence> evidence() {
        List<Evidence> evidence = new ArrayList<>();
        for (Rule rule : presentation.required()) {
            Rule inner = rule instanceof Rule.Named named ? named.rule() : rule;
            if (inner instanceof Rule.Count count) {
                evidence.add(counted(rule, count));
                count.rules().forEach(r -> evidence.add(line(r, Evidence.Role.REQUIRED)));
            } else {
                evidence.add(line(rule, Evidence.Role.REQUIRED));
            }
        }
        for (Rule rule : presentation.supporting()) {
            if (!rule.truth(facts, side).isFalse()) {
                evidence.add(line(rule, Evidence.Role.SUPPORTING));
            }
        }
        for (Rule rule : presentation.against()) {
            Truth truth = rule.truth(facts, side);
            if (!truth.isFalse()) {
                evidence.add(new Evidence(
                        truth.isTrue() ? Evidence.Kind.AGAINST : Evidence.Kind.NOT_KNOWN,
                        Evidence.Role.AGAINST,
                        phrases.rule(rule, side),
                        phrases.withTruth(rule, truth, side)));
            }
        }
        return evidence;
    }

    private Evidence line(Rule rule, Evidence.Role role) {
        Truth truth = rule.truth(facts, side);
        return new Evidence(kind(truth), role, phrases.rule(rule, side), phrases.withTruth(rule, truth, side));
    }

    /** The values stand with the members, which follow. */
    private Evidence counted(Rule rule, Rule.Count count) {
        long hold = count.rules().stream()
                .filter(r -> r.truth(facts, side).isTrue())
                .count();
        long unknown = count.rules().stream()
                .filter(r -> r.truth(facts, side).isUnknown())
                .count();
        Saying words = Saying.phrase(unknown > 0 ? "evidence.counted-not-known" : "evidence.counted")
                .with("rule", phrases.rule(rule, side))
                .with("there", hold)
                .with("all", count.rules().size())
                .with("unknown", unknown);
        return new Evidence(kind(rule.truth(facts, side)), Evidence.Role.REQUIRED, words, words);
    }

    private static Evidence.Kind kind(Truth truth) {
        return switch (truth) {
            case TRUE -> Evidence.Kind.FOR;
            case FALSE -> Evidence.Kind.AGAINST;
            case UNKNOWN -> Evidence.Kind.NOT_KNOWN;
        };
    }

    private List<Saying> openBecause(boolean mixed) {
        List<Saying> because = new ArrayList<>();
        for (Rule rule : presentation.openWhen()) {
            if (rule.truth(facts, side).isTrue()) {
                because.add(phrases.rule(rule, side));
            }
        }
        if (mixed) {
            for (Rule rule : presentation.against()) {
                if (rule.truth(facts, side).isTrue()) {
                    because.add(Saying.phrase("open.against").with("rule", phrases.withValues(rule, side)));
                }
            }
            because.add(Saying.phrase("open.mixed"));
            return because;
        }
        Set<Rule.Atom> atoms = new LinkedHashSet<>(Folding.atoms(supported));
        atoms.addAll(Folding.atoms(refuted));
        Set<String> tests = new LinkedHashSet<>();
        atoms.forEach(a -> tests.add(a.subject()));
        for (String test : tests) {
            Optional<MovementTest> known = phrases.battery().test(test);
            List<Rule> ofTest = atoms.stream()
                    .filter(a -> a.subject().equals(test))
                    .<Rule>map(a -> a)
                    .toList();
            because.add(known.<Saying>map(t -> Saying.phrase("finding.of")
                            .with("test", t.saidName())
                            .with("finding", phrases.values(ofTest.get(0), side)))
                    .orElse(phrases.rule(ofTest.get(0), side)));
        }
        return because;
    }
}
