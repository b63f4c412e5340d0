package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;
import org.drillsheaf.screen.rule.Truth;

/**
 * Works out how findings and presentations lie on each other, what holds already, and what does not go together.
 *
 * @param facts with the verdicts
 */
record LayerReader(Presentations rules, ReadingFacts facts, Phrases phrases) {

    private static Saying opening(Saying words, Saying values) {
        return new Saying.Opening(Phrases.withValues(words, values));
    }

    boolean isLax() {
        return facts.findings().values().stream()
                .flatMap(m -> m.values().stream())
                .anyMatch(
                        f -> f.test().norm() instanceof Norm.Count && f.beyond().isTrue());
    }

    Layers layers(Optional<PresentationReading> leading, List<Finding> findings, Optional<Reading> before) {
        Optional<Side> underneath = underneath(leading);
        Optional<Saying> onTop = onTop();
        return new Layers(
                underneath,
                underneath
                        .map(s -> opening(
                                new Saying.Own(rules.layers().underneathWords(), Phrases.sides(underneath)),
                                phrases.values(rules.layers().sideWhen(), underneath)))
                        .orElse(Saying.NOTHING),
                onTop,
                onTop.map(n -> opening(Saying.own(rules.layers().onTopWords()), Saying.NOTHING))
                        .orElse(Saying.NOTHING),
                leading.filter(p -> p.id().equals(rules.none().id())).isPresent() ? local(findings) : List.of(),
                before.map(this::fading).orElse(List.of()),
                underneath.map(Side::opposite).orElse(rules.layers().expectedFirst()));
    }

    /** Signs on both sides name none. */
    private Optional<Side> underneath(Optional<PresentationReading> leading) {
        Presentations.LayerRules layers = rules.layers();
        boolean applies =
                leading.filter(p -> layers.underneathNames().contains(p.id())).isPresent()
                        && layers.requires().truth(facts, Optional.empty()).isTrue();
        if (!applies) {
            return Optional.empty();
        }
        List<Side> sides = java.util.Arrays.stream(Side.values())
                .filter(s -> layers.sideWhen().truth(facts, Optional.of(s)).isTrue())
                .toList();
        return sides.size() == 1 ? Optional.of(sides.get(0)) : Optional.empty();
    }

    private Optional<Saying> onTop() {
        boolean named = facts.presentations().stream()
                .anyMatch(p -> p.id().equals(rules.layers().onTopOf()) && p.verdict() == Verdict.SUPPORTED);
        boolean there =
                rules.layers().onTopWhen().truth(facts, Optional.empty()).isTrue();
        return named && there
                ? rules.presentation(rules.layers().onTopName()).map(Presentation::saidName)
                : Optional.empty();
    }

    private List<Layers.LocalFinding> local(List<Finding> findings) {
        List<Layers.LocalFinding> local = new ArrayList<>();
        if (rules.layers().hipFronts().truth(facts, Optional.empty()).isTrue()) {
            local.add(new Layers.LocalFinding(
                    opening(
                            Saying.own(rules.layers().hipFrontsWords()),
                            phrases.values(rules.layers().hipFronts(), Optional.empty())),
                    rules.layers().hipFrontsGoal()));
        }
        for (Finding finding : findings) {
            if (finding.limited().isTrue()) {
                local.add(new Layers.LocalFinding(
                        Saying.phrase("finding.of")
                                .with("test", finding.place())
                                .with("finding", Saying.joined(Joint.COMMA, finding.values(), finding.kindWords())),
                        finding.test().goal()));
            }
        }
        return local;
    }

    private List<Saying> fading(Reading before) {
        List<Saying> fading = new ArrayList<>();
        for (PresentationReading held : before.supported()) {
            boolean still = facts.presentations().stream()
                    .anyMatch(p -> p.id().equals(held.id())
                            && p.side().equals(held.side())
                            && p.verdict() == Verdict.SUPPORTED);
            if (!still && !held.id().equals(rules.none().id())) {
                fading.add(held.name());
            }
        }
        return fading;
    }

    List<ScreenCondition> conditions(Map<String, String> declined) {
        Map<String, ScreenCondition> found = new LinkedHashMap<>();
        for (Presentations.ConditionRule rule : rules.conditions()) {
            if (rule.when().truth(facts, Optional.empty()).isTrue()) {
                found.putIfAbsent(
                        rule.id(),
                        new ScreenCondition(
                                rule.id(),
                                opening(Saying.own(rule.words()), Saying.NOTHING),
                                Optional.ofNullable(declined.get(rule.id()))));
            }
        }
        return List.copyOf(found.values());
    }

    List<Restriction> restrictions(List<PresentationReading> readings, boolean lax) {
        Map<String, Restriction> found = new LinkedHashMap<>();
        for (PresentationReading reading : readings) {
            boolean holds = reading.verdict() == Verdict.SUPPORTED;
            boolean already = reading.verdict() == Verdict.OPEN
                    && reading.presentation()
                            .holdsWhileOpen()
                            .map(r -> r.truth(facts, Optional.empty()))
                            .orElse(Truth.FALSE)
                            .isTrue();
            if (holds || already) {
                Saying because = holds
                        ? reading.name()
                        : Saying.phrase("restriction.already").with("name", reading.name());
                reading.presentation()
                        .restrictions()
                        .forEach(r ->
                                found.putIfAbsent(r.id(), new Restriction(r.id(), Saying.own(r.words()), because)));
            }
        }
        if (lax) {
            rules.laxRestrictions()
                    .forEach(r -> found.putIfAbsent(
                            r.id(), new Restriction(r.id(), Saying.own(r.words()), Saying.phrase("restriction.lax"))));
        }
        return List.copyOf(found.values());
    }

    List<Contradiction> contradictions() {
        List<Contradiction> found = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Presentations.ContradictionRule rule : rules.contradictions()) {
            if (rule.when().truth(facts, Optional.empty()).isTrue() && seen.add(rule.id())) {
                found.add(new Contradiction(
                        rule.id(),
                        new Saying.Opening(phrases.withValues(rule.when(), Optional.empty())),
                        Saying.own(rule.meaning()),
                        Saying.own(rule.nextStep()),
                        rule.refer()));
            }
        }
        return found;
    }
}
