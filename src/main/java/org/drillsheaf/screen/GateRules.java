package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.Visit;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.rule.Folding;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.Truth;

/**
 * Works out gates and what follows from a re-screen. Immutable and safe for several threads.
 */
public record GateRules(ReadingRules rules) {
    /** Weeks without any gain after which the drills themselves are looked at. */
    private static final int WEEKS_WITHOUT_GAIN = 4;
    /** Weeks without change after which another opinion is asked for. */
    private static final int WEEKS_TO_REFER = 8;

    private static final int DAYS_TOO_FEW = 3;
    private static final int DAYS_DONE = 4;
    private static final int PAIN_TO_HALVE = 3;
    private static final int PAIN_TO_STOP = 5;

    /**
     * What a gate is asked of.
     *
     * @param conditions the client's conditions
     * @param before the reading looked back to; empty at the first visit
     * @param given further answers besides what was observed, by key; for example whether a goal is barred
     */
    public record Asked(
            Client client,
            List<ClientCondition> conditions,
            Visit visit,
            Reading now,
            Optional<Reading> before,
            Map<String, Boolean> given) {}

    /** Met when every required line is true, not met when one is false, else not known. */
    public GateResult gate(Gate gate, Asked asked) {
        return gate(gate, asked, true);
    }

    /** The same counting only lines that are measured; lines about what was done are shown and not counted. */
    public GateResult measuredLinesOnly(Gate gate, Asked asked) {
        return gate(gate, asked, false);
    }

    private GateResult gate(Gate gate, Asked asked, boolean countsDoing) {
        Optional<Comparison> comparison = asked.before()
                .map(b -> new Rescreen(rules.battery(), rules.presentations()).compare(asked.client(), b, asked.now()));
        Map<String, Boolean> observed = new LinkedHashMap<>(asked.visit().observed());
        observed.putAll(asked.given());
        ReadingFacts facts = rules.facts(
                asked.client(),
                asked.conditions(),
                asked.visit(),
                asked.now(),
                observed,
                comparison,
                asked.before().orElse(asked.now()).layers().expectedFirst());
        Phrases phrases = new Phrases(rules.battery(), facts);
        List<GateResult.Line> lines = new ArrayList<>();
        Truth all = Truth.TRUE;
        for (Rule rule : gate.required()) {
            GateResult.Line line = line(rule, true, facts, phrases);
            lines.add(line);
            all = countsDoing || line.measured() ? all.and(line.truth()) : all;
        }
        gate.helps().forEach(rule -> lines.add(line(rule, false, facts, phrases)));
        GateResult.Status status =
                switch (all) {
                    case TRUE -> GateResult.Status.MET;
                    case FALSE -> GateResult.Status.NOT_MET;
                    case UNKNOWN -> GateResult.Status.NOT_KNOWN;
                };
        return new GateResult(gate, status, lines);
    }

    private static GateResult.Line line(Rule rule, boolean required, ReadingFacts facts, Phrases phrases) {
        Truth truth = rule.truth(facts, Optional.empty());
        boolean measured = Folding.atoms(rule).stream().anyMatch(a -> a.word() != Rule.Word.OBSERVED);
        return new GateResult.Line(truth, required, measured, phrases.withTruth(rule, truth, Optional.empty()));
    }

    /**
     * What follows from a re-screen.
     *
     * @param reasons the deciding one first
     */
    public record Decision(NextStep step, List<Saying> reasons) {
        public Decision {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Advance, stay, step back or refer.
     *
     * @param weeks whole weeks between the two visits
     * @param stepsBackBefore how many steps back in a row there were just before
     */
    public Decision decide(GateResult gate, Comparison comparison, Asked asked, long weeks, int stepsBackBefore) {
        List<Saying> reasons = new ArrayList<>();
        var log = asked.visit().log();
        int pain = log.newPain().orElse(0);
        boolean stays = log.painStays().orElse(false);
        asked.now()
                .referrals()
                .forEach(r -> reasons.add(Saying.phrase("next.refer.contradiction")
                        .with("findings", r.findings())
                        .with("meaning", r.meaning())
                        .with("step", r.nextStep())));
        if (!asked.now().safety().isClear()) {
            reasons.add(
                    0,
                    Saying.phrase("next.refer.safety")
                            .with("status", asked.now().safety().status().words()));
        }
        if (pain > PAIN_TO_STOP || stays) {
            reasons.add(Saying.phrase("next.refer.pain"));
        }
        if (!reasons.isEmpty()) {
            return new Decision(NextStep.REFER, reasons);
        }
        List<TestChange> worse = comparison.changes().stream()
                .filter(c -> c.kind() == TestChange.Kind.WORSE
                        && isRequired(gate.gate(), c.test().id()))
                .toList();
        boolean stepsBack = !worse.isEmpty();
        boolean noChange = !comparison.anyGained() && weeks >= WEEKS_TO_REFER;
        if ((stepsBack && stepsBackBefore >= 1) || (noChange && gate.status() == GateResult.Status.NOT_MET)) {
            return new Decision(
                    NextStep.REFER,
                    List.of(
                            stepsBack
                                    ? Saying.phrase("next.refer.back-twice")
                                    : Saying.phrase("next.refer.no-change").with("weeks", weeks)));
        }
        if (stepsBack) {
            worse.forEach(c -> reasons.add(c.words()));
            reasons.add(Saying.phrase("next.back"));
            return new Decision(NextStep.STEP_BACK, reasons);
        }
        return new Decision(stay(gate, comparison, asked, weeks, pain, reasons), reasons);
    }

    private static NextStep stay(
            GateResult gate, Comparison comparison, Asked asked, long weeks, int pain, List<Saying> reasons) {
        var log = asked.visit().log();
        if (comparison.anyNewPain()) {
            reasons.add(Saying.phrase("next.stay.test-pain"));
            return NextStep.STAY;
        }
        if (pain >= PAIN_TO_HALVE) {
            reasons.add(Saying.phrase("next.stay.pain"));
            return NextStep.STAY;
        }
        if (log.otherReason().orElse(false)) {
            reasons.add(Saying.phrase("next.stay.bad-spell"));
            return NextStep.STAY;
        }
        double days = log.daysPerWeek().orElse(DAYS_DONE);
        switch (gate.status()) {
            case MET -> {
                reasons.add(Saying.phrase("next.advance"));
                return NextStep.ADVANCE;
            }
            case NOT_KNOWN -> {
                reasons.add(Saying.phrase("next.stay.not-known"));
                gate.lines().stream()
                        .filter(l -> l.required() && l.truth().isUnknown())
                        .forEach(l -> reasons.add(l.words()));
            }
            case NOT_MET -> {
                if (days < DAYS_TOO_FEW) {
                    reasons.add(Saying.phrase("next.stay.few-days"));
                } else if (comparison.anyGained()) {
                    reasons.add(Saying.phrase("next.stay.gained"));
                } else if (weeks >= WEEKS_WITHOUT_GAIN && days >= DAYS_DONE) {
                    reasons.add(Saying.phrase("next.stay.nothing-gained"));
                } else {
                    reasons.add(Saying.phrase("next.stay.not-met"));
                }
                gate.lines().stream()
                        .filter(l -> l.required() && l.truth().isFalse())
                        .forEach(l -> reasons.add(l.words()));
            }
        }
        return NextStep.STAY;
    }

    private static boolean isRequired(Gate gate, String testId) {
        return gate.required().stream().flatMap(r -> Folding.atoms(r).stream()).anyMatch(a -> a.subject()
                .equals(testId));
    }
}
