package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.SafetyAnswer;
import org.drillsheaf.client.Visit;
import org.drillsheaf.screen.rule.Truth;

/**
 * Reads a screen: findings, presentations with their evidence, layers, contradictions and what to test next. Immutable and safe
 * for several threads.
 *
 * @param factor how many standard errors a value must lie from a cut-off to count; 1 by default, 1.645 for a strict clinic
 */
public record ReadingRules(Battery battery, Presentations presentations, SafetyGate safetyGate, BigDecimal factor) {
    /** From this age on every cut-off rests on few people. Years. */
    private static final int FEW_DATA_FROM = 80;

    public ReadingRules(Battery battery, Presentations presentations, SafetyGate safetyGate) {
        this(battery, presentations, safetyGate, BigDecimal.ONE);
    }

    /**
     * @param before the reading of an earlier visit to look back to
     */
    public Reading read(
            Client client, List<ClientCondition> conditions, Visit visit, Screen screen, Optional<Reading> before) {
        int age = client.born().ageOn(visit.date());
        SafetyReading safety = safetyGate.read(client, conditions, visit);
        Side first = before.map(b -> b.layers().expectedFirst())
                .orElse(presentations.layers().expectedFirst());
        ReadingFacts facts = facts(client, conditions, visit, screen, age, first);
        List<Finding> findings = facts.findings().values().stream()
                .flatMap(m -> m.values().stream())
                .toList();
        boolean clear = safety.isClear();
        Phrases phrases = new Phrases(battery, names(), facts);
        List<Judge> judges = clear ? judges(facts, phrases) : List.of();
        List<PresentationReading> readings = clear ? withNone(leaning(judges), phrases) : List.of();
        Optional<PresentationReading> leading =
                readings.stream().filter(p -> p.verdict() == Verdict.SUPPORTED).findFirst();
        LayerReader layering = new LayerReader(presentations, facts.with(readings), phrases);
        List<Judge> open =
                judges.stream().filter(j -> j.verdict() == Verdict.OPEN).toList();
        // Without a reference for the age no test could settle anything.
        NextTestChooser.Choice choice = new NextTestChooser(
                        battery, facts, age < Scale.ADULT_FROM ? List.of() : open, readings, client.languages())
                .choose();
        boolean lax = layering.isLax();
        boolean noReference = age < Scale.ADULT_FROM;
        return new Reading(
                visit.date(),
                age,
                screen,
                safety,
                findings,
                readings,
                leading,
                clear ? layering.layers(leading, findings, before) : Layers.none(first),
                lax,
                layering.conditions(visit.declined()),
                layering.restrictions(readings, lax),
                layering.contradictions(),
                choice.next(),
                choice.standIn(),
                age >= FEW_DATA_FROM,
                noReference,
                remarks(client, visit, age, findings));
    }

    /** What rules ask about a reading that was already made. */
    ReadingFacts facts(
            Client client,
            List<ClientCondition> conditions,
            Visit visit,
            Reading reading,
            Map<String, Boolean> observed,
            Optional<Comparison> comparison,
            Side expectedFirst) {
        Map<String, Scale> scales = new LinkedHashMap<>();
        battery.tests().forEach((id, test) -> scales.put(id, new Scale(test, client.sex(), reading.age(), factor)));
        return new ReadingFacts(
                scales,
                ReadingFacts.byPlace(reading.findings()),
                reading.age(),
                observed,
                new Bars(conditions, recent(visit), visit.date()),
                reading.presentations(),
                comparison,
                expectedFirst);
    }

    ReadingFacts facts(
            Client client, List<ClientCondition> conditions, Visit visit, Screen screen, int age, Side expectedFirst) {
        Bars bars = new Bars(conditions, recent(visit), visit.date());
        Map<String, Scale> scales = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (MovementTest test : battery.tests().values()) {
            Scale scale = new Scale(test, client.sex(), age, factor);
            scales.put(test.id(), scale);
            for (Optional<Side> side : test.places()) {
                Finding finding = new FindingMaker(scale, bars.reason(test, side))
                        .finding(side, screen.measurement(test.id(), side));
                findings.add(withStandIn(finding, screen));
            }
        }
        return new ReadingFacts(
                scales,
                ReadingFacts.byPlace(findings),
                age,
                visit.observed(),
                bars,
                List.of(),
                Optional.empty(),
                expectedFirst);
    }

    /** Who could never do what the test asks was never beyond what is expected; a yes decides nothing. */
    private static Finding withStandIn(Finding finding, Screen screen) {
        boolean never = finding.kind() == FindingKind.NOT_TESTED
                && finding.test()
                        .standIn()
                        .flatMap(s -> screen.measurement(s.recordedWith(), Optional.empty())
                                .flatMap(m -> m.mark(s.id())))
                        .filter(yes -> !yes)
                        .isPresent();
        return never
                ? new Finding(
                        finding.test(),
                        finding.side(),
                        finding.kind(),
                        finding.word(),
                        finding.limited(),
                        Truth.FALSE,
                        finding.measurement(),
                        finding.values(),
                        (finding.reason().isEmpty() ? "" : finding.reason() + "; ")
                                + "never could, by the client's word")
                : finding;
    }

    private List<SafetyAnswer> recent(Visit visit) {
        return safetyGate.questions().stream()
                .filter(SafetyQuestion::asksPartAndDate)
                .flatMap(q -> Optional.ofNullable(visit.safety().get(q.id())).stream())
                .toList();
    }

    Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        presentations.list().forEach(p -> names.put(p.id(), p.name()));
        return names;
    }

    List<Judge> judges(ReadingFacts facts, Phrases phrases) {
        List<Judge> judges = new ArrayList<>();
        for (Presentation presentation : presentations.list()) {
            if (presentation.sided()) {
                for (Side side : Side.values()) {
                    judges.add(new Judge(presentation, Optional.of(side), facts, phrases));
                }
            } else {
                judges.add(new Judge(presentation, Optional.empty(), facts, phrases));
            }
        }
        return judges;
    }

    /** When nothing holds, the only open name that a single test could still make hold is the one it leans to. */
    private List<PresentationReading> leaning(List<Judge> judges) {
        List<PresentationReading> readings = judges.stream().map(Judge::reading).toList();
        boolean nothingHolds = readings.stream().noneMatch(r -> r.verdict() == Verdict.SUPPORTED);
        List<Judge> near = judges.stream()
                .filter(j -> j.verdict() == Verdict.OPEN)
                .filter(j -> battery.tests().keySet().stream().anyMatch(j::couldHoldAfter))
                .toList();
        if (!nothingHolds || near.size() != 1) {
            return readings;
        }
        int index = judges.indexOf(near.get(0));
        List<PresentationReading> changed = new ArrayList<>(readings);
        changed.set(index, readings.get(index).withLeaning(true));
        return changed;
    }

    private List<PresentationReading> withNone(List<PresentationReading> readings, Phrases phrases) {
        boolean any = readings.stream().anyMatch(r -> r.verdict() == Verdict.SUPPORTED);
        List<String> open = readings.stream()
                .filter(r -> r.verdict() == Verdict.OPEN)
                .map(r -> phrases.names().getOrDefault(r.id(), r.id())
                        + r.side().map(s -> ", " + s.id()).orElse("") + " is open")
                .toList();
        Verdict verdict = any ? Verdict.NOT_SUPPORTED : open.isEmpty() ? Verdict.SUPPORTED : Verdict.OPEN;
        List<PresentationReading> all = new ArrayList<>(readings);
        all.add(new PresentationReading(
                presentations.none(),
                Optional.empty(),
                verdict,
                false,
                false,
                verdict == Verdict.SUPPORTED,
                List.of(),
                verdict == Verdict.OPEN ? open : List.of()));
        return all;
    }

    private static List<String> remarks(Client client, Visit visit, int age, List<Finding> findings) {
        List<String> remarks = new ArrayList<>();
        if (age >= FEW_DATA_FROM) {
            remarks.add("Few data: hardly anybody of this age was measured for these cut-offs.");
        }
        if (age < Scale.ADULT_FROM) {
            remarks.add(
                    "No reference for this age: only the joint count has a cut-off below " + Scale.ADULT_FROM + ".");
        }
        if (client.sex().isEmpty()) {
            remarks.add("Sex not given: a finding counts only where the cut-offs of both sexes agree.");
        }
        visit.measuredBy()
                .filter(m -> !m.equals(client.coach()))
                .ifPresent(m -> remarks.add("Another coach measured (" + m + "): a change may be the coach's."));
        Set<String> barred = new LinkedHashSet<>();
        for (Finding finding : findings) {
            boolean taken = finding.measurement().isPresent();
            if (finding.kind() == FindingKind.NOT_TESTED && !finding.reason().isEmpty()) {
                barred.add(finding.test().name()
                        + finding.side().map(s -> ", " + s.id()).orElse("") + (taken ? " was measured but " : " ")
                        + finding.reason() + ".");
            }
            finding.measurement()
                    .filter(m -> m.date().isBefore(visit.date()))
                    .ifPresent(m -> remarks.add(finding.test().name() + " is of " + m.date() + "."));
        }
        remarks.addAll(barred);
        return List.copyOf(new LinkedHashSet<>(remarks));
    }
}
