package org.drillsheaf.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;

/**
 * What the findings of one visit mean together, with its working shown. When the safety answers are not clear, only findings
 * already measured stand here: no presentation, no next test.
 *
 * @param age whole years at the visit
 * @param presentations every presentation, in the order of leading; one with sides stands twice
 * @param leading the name that leads; empty when nothing is held
 * @param lax whether the joint count reaches its cut-off
 * @param conditions conditions that follow from the screen itself
 * @param restrictions what holds because of a presentation, held or still open
 * @param nextTest empty when nothing is open or no allowed test would settle anything
 * @param standIn the question to ask instead of a test that would settle more and is barred
 * @param remarks sentences for the coach: few data, no reference for this age, another coach measured, tests that are barred
 */
public record Reading(
        LocalDate date,
        int age,
        Screen screen,
        SafetyReading safety,
        List<Finding> findings,
        List<PresentationReading> presentations,
        Optional<PresentationReading> leading,
        Layers layers,
        boolean lax,
        List<ScreenCondition> conditions,
        List<Restriction> restrictions,
        List<Contradiction> contradictions,
        Optional<NextTest> nextTest,
        Optional<NextTest.StandInQuestion> standIn,
        boolean fewData,
        boolean noReference,
        List<Saying> remarks) {

    public Reading {
        findings = List.copyOf(findings);
        presentations = List.copyOf(presentations);
        conditions = List.copyOf(conditions);
        restrictions = List.copyOf(restrictions);
        contradictions = List.copyOf(contradictions);
        remarks = List.copyOf(remarks);
    }

    public Optional<Finding> finding(String testId, Optional<Side> side) {
        return findings.stream()
                .filter(f -> f.test().id().equals(testId) && f.side().equals(side))
                .findFirst();
    }

    public Optional<PresentationReading> presentation(String id, Optional<Side> side) {
        return presentations.stream()
                .filter(p -> p.id().equals(id) && p.side().equals(side))
                .findFirst();
    }

    public List<PresentationReading> supported() {
        return presentations.stream()
                .filter(p -> p.verdict() == Verdict.SUPPORTED)
                .toList();
    }

    public List<PresentationReading> open() {
        return presentations.stream().filter(p -> p.verdict() == Verdict.OPEN).toList();
    }

    /** What is held, or else open, in one line. */
    public Saying headline() {
        List<PresentationReading> shown = supported().isEmpty() ? open() : supported();
        if (supported().isEmpty() && shown.size() > 1) {
            return Saying.phrase("reading.open-many").with("count", shown.size());
        }
        return shown.isEmpty()
                ? Saying.phrase("reading.nothing-held")
                : Saying.joined(
                        Saying.Joint.SEMICOLON,
                        shown.stream().map(PresentationReading::nameWithVerdict).toList());
    }

    /** Verdict of a presentation, over its sides: the strongest of them. */
    public Verdict verdict(String id) {
        return presentations.stream()
                .filter(p -> p.id().equals(id))
                .map(PresentationReading::verdict)
                .min(java.util.Comparator.naturalOrder())
                .orElse(Verdict.NOT_SUPPORTED);
    }

    public boolean hasRestriction(String id) {
        return restrictions.stream().anyMatch(r -> r.id().equals(id));
    }

    /** Findings that a clinician should look at before loading. */
    public List<Contradiction> referrals() {
        return contradictions.stream().filter(Contradiction::refer).toList();
    }
}
