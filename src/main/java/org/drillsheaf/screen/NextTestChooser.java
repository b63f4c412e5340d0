package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;

/**
 * Chooses the one test that would settle most: the largest expected drop of uncertainty in bits, summed over the open
 * presentations; ties go to the shorter test, then to the order of the battery.
 *
 * @param open judges of the open presentations
 */
record NextTestChooser(
        Battery battery,
        ReadingFacts facts,
        List<Judge> open,
        List<PresentationReading> readings,
        List<String> languages) {
    /** Gains that differ by less than this are a tie. Bits. */
    private static final double TIE = 1e-9;
    /** A test that settles less than this is not worth its minutes; it would be shown as nothing. Bits. */
    private static final double LEAST = 0.005;

    private record Candidate(MovementTest test, double bits, boolean barred) {}

    /** What to test next, and the question that stands in for a better test that is barred. */
    record Choice(Optional<NextTest> next, Optional<NextTest.StandInQuestion> standIn) {}

    Choice choose() {
        Set<String> tests = new LinkedHashSet<>();
        open.forEach(j -> tests.addAll(j.openTests()));
        List<Candidate> candidates = new ArrayList<>();
        for (MovementTest test : battery.tests().values()) {
            if (tests.contains(test.id()) && hasReference(test)) {
                boolean barred = facts.bars().barsAll(test);
                double bits = open.stream()
                        .filter(j -> j.openTests().contains(test.id()))
                        .mapToDouble(j -> j.gain(test.id(), f -> barred || mayTake(f)))
                        .sum();
                if (bits >= LEAST) {
                    candidates.add(new Candidate(test, bits, barred));
                }
            }
        }
        Optional<Candidate> allowed = best(candidates, false);
        Optional<Candidate> barred = best(candidates, true);
        Optional<NextTest.StandInQuestion> question = barred.filter(
                        b -> allowed.isEmpty() || b.bits() > allowed.get().bits() - TIE)
                .flatMap(b -> question(b.test()));
        return new Choice(allowed.map(this::next), question);
    }

    private boolean hasReference(MovementTest test) {
        Scale scale = facts.scales().get(test.id());
        return scale != null && scale.hasReference();
    }

    private boolean mayTake(Finding finding) {
        return finding.kind() != FindingKind.PAINFUL
                && facts.bars().reason(finding.test(), finding.side()).isEmpty();
    }

    private static Optional<Candidate> best(List<Candidate> candidates, boolean barred) {
        Candidate best = null;
        for (Candidate candidate : candidates) {
            if (candidate.barred() == barred && (best == null || isBetter(candidate, best))) {
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean isBetter(Candidate candidate, Candidate best) {
        if (StrictMath.abs(candidate.bits() - best.bits()) > TIE) {
            return candidate.bits() > best.bits();
        }
        return candidate.test().minutes() < best.test().minutes();
    }

    private NextTest next(Candidate candidate) {
        MovementTest test = candidate.test();
        Collection<Finding> sides =
                facts.findings().getOrDefault(test.id(), Map.of()).values();
        boolean taken = sides.stream().anyMatch(f -> f.measurement().isPresent() && f.kind() != FindingKind.PAINFUL);
        Optional<Finding> sideLeftOut = sides.stream()
                .filter(f -> taken && f.measurement().isEmpty() && mayTake(f))
                .findFirst();
        boolean repeat = taken && sideLeftOut.isEmpty();
        List<Saying> names = open.stream()
                .filter(j -> j.openTests().contains(test.id()))
                .map(j -> readings.stream()
                        .filter(r ->
                                r.id().equals(j.presentation().id()) && r.side().equals(j.side()))
                        .map(PresentationReading::name)
                        .findFirst()
                        .orElse(j.presentation().saidName()))
                .toList();
        Saying reason = Saying.phrase(repeat ? "next-test.repeat" : "next-test.take")
                .with("test", sideLeftOut.map(Finding::place).orElse(test.saidName()))
                .with("names", Saying.joined(Joint.SEMICOLON, names))
                .with("bits", candidate.bits())
                .with("minutes", test.minutes());
        return new NextTest(test, candidate.bits(), repeat, test.minutes(), withCare(reason, test));
    }

    private Saying withCare(Saying reason, MovementTest test) {
        Saying told = reason;
        for (ClientCondition condition : facts.bars().conditions()) {
            LocalText care = test.cares().get(condition.id());
            if (care != null) {
                told = Saying.phrase("next-test.with-care")
                        .with("reason", told)
                        .with("condition", Saying.name(Saying.Name.Kind.CONDITION, condition.id()))
                        .with("care", Saying.own(care));
            }
        }
        return told;
    }

    /** Only while the answer is not known. */
    private Optional<NextTest.StandInQuestion> question(MovementTest barred) {
        return barred.standIn()
                .filter(s -> facts.finding(s.recordedWith(), Optional.empty())
                        .flatMap(Finding::measurement)
                        .flatMap(m -> m.mark(s.id()))
                        .isEmpty())
                .map(s -> new NextTest.StandInQuestion(
                        barred, s.id(), s.question().best(languages)));
    }
}
