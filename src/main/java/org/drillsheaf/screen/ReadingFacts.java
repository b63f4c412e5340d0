package org.drillsheaf.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.screen.rule.Facts;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.Truth;

/**
 * What rules ask, answered from the findings of one visit.
 *
 * @param scales by test id
 * @param presentations verdicts, as far as they are known already
 * @param comparison with the visit before, where there is one
 */
record ReadingFacts(
        Map<String, Scale> scales,
        Map<String, Map<Optional<Side>, Finding>> findings,
        int age,
        Map<String, Boolean> observed,
        Bars bars,
        List<PresentationReading> presentations,
        Optional<Comparison> comparison,
        Side expectedFirst)
        implements Facts {

    static Map<String, Map<Optional<Side>, Finding>> byPlace(List<Finding> findings) {
        Map<String, Map<Optional<Side>, Finding>> map = new LinkedHashMap<>();
        findings.forEach(f ->
                map.computeIfAbsent(f.test().id(), id -> new LinkedHashMap<>()).put(f.side(), f));
        return map;
    }

    ReadingFacts with(List<PresentationReading> verdicts) {
        return new ReadingFacts(scales, findings, age, observed, bars, verdicts, comparison, expectedFirst);
    }

    Optional<Finding> finding(String test, Optional<Side> side) {
        return Optional.ofNullable(findings.getOrDefault(test, Map.of()).get(side));
    }

    @Override
    public Truth truth(Rule.Atom atom, Optional<Side> side) {
        return switch (atom.word()) {
            case AGE ->
                Truth.of(
                        atom.comparison().sign().equals(">=")
                                ? age >= atom.comparison().number()
                                : age <= atom.comparison().number());
            case OBSERVED ->
                Optional.ofNullable(observed.get(atom.subject())).map(Truth::of).orElse(Truth.UNKNOWN);
            case HOLDS -> verdict(atom.subject(), side, Verdict.SUPPORTED);
            case OPEN -> verdict(atom.subject(), side, Verdict.OPEN);
            case NEW_PAIN -> Truth.of(comparison.map(Comparison::anyNewPain).orElse(false));
            case GAINED -> change(atom, side, TestChange.Kind.BETTER);
            case LOST -> change(atom, side, TestChange.Kind.WORSE);
            case DIFFER -> isLess(atom.subject(), Side.LEFT).or(isLess(atom.subject(), Side.RIGHT));
            case LESS -> isLess(atom.subject(), side.orElseThrow());
            default -> ofFinding(atom, side);
        };
    }

    private Truth verdict(String id, Optional<Side> side, Verdict verdict) {
        return Truth.of(presentations.stream()
                .anyMatch(
                        p -> p.id().equals(id) && (side.isEmpty() || p.side().equals(side)) && p.verdict() == verdict));
    }

    private Truth change(Rule.Atom atom, Optional<Side> side, TestChange.Kind wanted) {
        Optional<TestChange> change = comparison.flatMap(c -> c.change(atom.subject(), side, atom.part()));
        if (change.isEmpty() || change.get().kind() == TestChange.Kind.NOT_KNOWN) {
            return Truth.UNKNOWN;
        }
        return Truth.of(change.get().kind() == wanted);
    }

    private Truth isLess(String test, Side side) {
        Scale scale = scales.get(test);
        if (scale == null) {
            return Truth.UNKNOWN;
        }
        return scale.isLess(span(scale, Optional.of(side)), span(scale, Optional.of(side.opposite())));
    }

    /** A value that does not count (pain, barred, nothing taken) is unknown here too. */
    private Span span(Scale scale, Optional<Side> side) {
        return finding(scale.test().id(), side)
                .filter(f -> f.kind() != FindingKind.NOT_TESTED)
                .map(f -> scale.span(f.measurement(), Optional.empty()))
                .orElse(Span.UNKNOWN);
    }

    private Truth ofFinding(Rule.Atom atom, Optional<Side> side) {
        Optional<Finding> found = finding(atom.subject(), side);
        Scale scale = scales.get(atom.subject());
        if (found.isEmpty() || scale == null) {
            return Truth.UNKNOWN;
        }
        Finding finding = found.get();
        Optional<Measurement> counted =
                finding.measurement().filter(m -> !m.painful() && finding.kind() != FindingKind.NOT_TESTED);
        return switch (atom.word()) {
            case LIMITED -> finding.limited();
            case FREE -> finding.free();
            case BEYOND -> finding.beyond();
            case WIDE -> counted.map(m -> FindingMaker.isWide(scale, m)).orElse(Truth.UNKNOWN);
            case NARROW -> counted.map(m -> FindingMaker.isNarrow(scale, m)).orElse(Truth.UNKNOWN);
            case PAINFUL ->
                finding.measurement().map(m -> Truth.of(m.painful())).orElse(Truth.UNKNOWN);
            case BARRED -> Truth.of(bars.reason(finding.test(), side).isPresent());
            case MARKED -> mark(atom, counted);
            case NOTED -> mark(atom, finding.measurement());
            case VALUE ->
                counted.map(m -> scale.compares(
                                scale.span(Optional.of(m), atom.part()),
                                atom.comparison().sign().equals(">="),
                                atom.comparison().number()))
                        .orElse(Truth.UNKNOWN);
            case WRITTEN ->
                finding.measurement()
                        .flatMap(m -> atom.part().isPresent()
                                ? Optional.ofNullable(m.parts().get(atom.part().get()))
                                : m.value())
                        .map(v -> Truth.of(
                                atom.comparison().sign().equals(">=")
                                        ? v >= atom.comparison().number()
                                        : v <= atom.comparison().number()))
                        .orElse(Truth.UNKNOWN);
            default -> throw new IllegalStateException("no answer to " + atom);
        };
    }

    private static Truth mark(Rule.Atom atom, Optional<Measurement> measurement) {
        return measurement
                .flatMap(m -> m.mark(atom.part().orElseThrow()))
                .map(Truth::of)
                .orElse(Truth.UNKNOWN);
    }
}
