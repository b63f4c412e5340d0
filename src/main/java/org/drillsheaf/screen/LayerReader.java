package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.screen.rule.Truth;

/**
 * Works out how findings and presentations lie on each other, what holds already, and what does not go together.
 *
 * @param facts with the verdicts
 */
record LayerReader(Presentations rules, ReadingFacts facts, Phrases phrases) {

    boolean isLax() {
        return facts.findings().values().stream()
                .flatMap(m -> m.values().stream())
                .anyMatch(
                        f -> f.test().norm() instanceof Norm.Count && f.beyond().isTrue());
    }

    Layers layers(Optional<PresentationReading> leading, List<Finding> findings, Optional<Reading> before) {
        Optional<Side> underneath = underneath(leading);
        Optional<String> onTop = onTop();
        return new Layers(
                underneath,
                underneath
                        .map(s -> Shown.upperFirst(Phrases.sides(rules.layers().underneathWords(), underneath)) + " ("
                                + phrases.values(rules.layers().sideWhen(), underneath) + ")")
                        .orElse(""),
                onTop,
                onTop.map(n -> Shown.upperFirst(rules.layers().onTopWords())).orElse(""),
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

    private Optional<String> onTop() {
        boolean named = facts.presentations().stream()
                .anyMatch(p -> p.id().equals(rules.layers().onTopOf()) && p.verdict() == Verdict.SUPPORTED);
        boolean there =
                rules.layers().onTopWhen().truth(facts, Optional.empty()).isTrue();
        return named && there
                ? rules.presentation(rules.layers().onTopName()).map(Presentation::name)
                : Optional.empty();
    }

    private List<Layers.LocalFinding> local(List<Finding> findings) {
        List<Layers.LocalFinding> local = new ArrayList<>();
        if (rules.layers().hipFronts().truth(facts, Optional.empty()).isTrue()) {
            local.add(new Layers.LocalFinding(
                    Shown.upperFirst(rules.layers().hipFrontsWords()) + " ("
                            + phrases.values(rules.layers().hipFronts(), Optional.empty()) + ")",
                    rules.layers().hipFrontsGoal()));
        }
        for (Finding finding : findings) {
            if (finding.limited().isTrue()) {
                String side = finding.side().map(s -> ", " + s.id()).orElse("");
                local.add(new Layers.LocalFinding(
                        finding.test().name() + side + ": " + finding.values() + ", " + finding.kindWords(),
                        finding.test().goal()));
            }
        }
        return local;
    }

    private List<String> fading(Reading before) {
        List<String> fading = new ArrayList<>();
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
                                Shown.upperFirst(rule.words()),
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
                String because = reading.name() + (holds ? "" : " is open; until it is settled this holds already");
                reading.presentation()
                        .restrictions()
                        .forEach(r -> found.putIfAbsent(r.id(), new Restriction(r.id(), r.words(), because)));
            }
        }
        if (lax) {
            rules.laxRestrictions()
                    .forEach(r -> found.putIfAbsent(
                            r.id(), new Restriction(r.id(), r.words(), "the joint count reaches its cut-off")));
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
                        Shown.upperFirst(phrases.withValues(rule.when(), Optional.empty())),
                        rule.meaning(),
                        rule.nextStep(),
                        rule.refer()));
            }
        }
        return found;
    }
}
