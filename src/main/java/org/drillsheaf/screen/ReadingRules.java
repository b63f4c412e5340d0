package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.SafetyAnswer;
import org.drillsheaf.client.Visit;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;
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
        Phrases phrases = new Phrases(battery, facts);
        List<Judge> judges = clear ? judges(facts, phrases) : List.of();
        List<PresentationReading> readings = clear ? withNone(leaning(judges)) : List.of();
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

    /** The name of a test, of one of two values of a test, or of a presentation, in the languages that are there. */
    public Optional<LocalText> name(Saying.Name.Kind kind, String id) {
        return switch (kind) {
            case TEST -> battery.test(id).map(MovementTest::nameByLanguage);
            case PART ->
                battery.tests().values().stream()
                        .filter(t -> t.norm() instanceof Norm.Pair)
                        .flatMap(t -> ((Norm.Pair) t.norm()).parts().stream())
                        .filter(p -> p.id().equals(id))
                        .map(Norm.Pair.Part::name)
                        .findFirst();
            case PRESENTATION ->
                Stream.concat(presentations.list().stream(), Stream.of(presentations.none()))
                        .filter(p -> p.id().equals(id))
                        .map(Presentation::name)
                        .findFirst();
            default -> Optional.empty();
        };
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
                        Saying.joined(Joint.SEMICOLON, finding.reason(), Saying.phrase("finding.never-could")))
                : finding;
    }

    private List<SafetyAnswer> recent(Visit visit) {
        return safetyGate.questions().stream()
                .filter(SafetyQuestion::asksPartAndDate)
                .flatMap(q -> Optional.ofNullable(visit.safety().get(q.id())).stream())
                .toList();
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

    private List<PresentationReading> withNone(List<PresentationReading> readings) {
        boolean any = readings.stream().anyMatch(r -> r.verdict() == Verdict.SUPPORTED);
        List<Saying.Phrase> open = readings.stream()
                .filter(r -> r.verdict() == Verdict.OPEN)
                .map(r -> Saying.phrase("rule.open").with("what", r.name()))
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
                verdict == Verdict.OPEN ? List.copyOf(open) : List.of()));
        return all;
    }

    private static List<Saying> remarks(Client client, Visit visit, int age, List<Finding> findings) {
        List<Saying> remarks = new ArrayList<>();
        if (age >= FEW_DATA_FROM) {
            remarks.add(Saying.phrase("remark.few-data"));
        }
        if (age < Scale.ADULT_FROM) {
            remarks.add(Saying.phrase("remark.no-reference").with("age", Scale.ADULT_FROM));
        }
        if (client.sex().isEmpty()) {
            remarks.add(Saying.phrase("remark.sex-not-given"));
        }
        visit.measuredBy()
                .filter(m -> !m.equals(client.coach()))
                .ifPresent(
                        m -> remarks.add(Saying.phrase("remark.another-coach").with("coach", Saying.written(m))));
        Set<Saying> barred = new LinkedHashSet<>();
        for (Finding finding : findings) {
            boolean taken = finding.measurement().isPresent();
            if (finding.kind() == FindingKind.NOT_TESTED && !finding.reason().isEmpty()) {
                barred.add(Saying.phrase(taken ? "remark.measured-but" : "remark.not-tested")
                        .with("test", finding.place())
                        .with("reason", finding.reason()));
            }
            finding.measurement()
                    .filter(m -> m.date().isBefore(visit.date()))
                    .ifPresent(m -> remarks.add(Saying.phrase("remark.of-another-day")
                            .with("test", finding.test().saidName())
                            .with("date", Saying.written(m.date().toString()))));
        }
        remarks.addAll(barred);
        return List.copyOf(new LinkedHashSet<>(remarks));
    }
}
