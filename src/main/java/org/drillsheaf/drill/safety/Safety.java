package org.drillsheaf.drill.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.ConditionTag;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.saying.Saying;

/**
 * Judges a drill for a client. Every condition is judged alone, with its own changes; then all changes are put into the
 * drill together, it is measured again, and every rule is read again. The author's tags count beside the rules, the
 * stricter wins.
 */
public final class Safety {
    /** With more sentences than these a drill is too complicated to be safe alone at home. House rule. */
    public static final int MOST_TEXTS = 4;

    private final SafetyRules rules;
    private final ChangedDrill.Maker maker;

    /**
     * @param reader reads changed versions of a drill
     * @param measuring measures a drill
     */
    public Safety(SafetyRules rules, DrillReader reader, Measuring measuring) {
        this.rules = rules;
        Measuring named = drill -> withLabels(measuring.facts(drill), drill);
        this.maker = new ChangedDrill.Maker(reader, named);
    }

    /** What this client's conditions do to the drill. */
    public Judgement judge(Drill drill, ClientSafety client) {
        ChangedDrill written = maker.make(drill, new Changes()).orElseThrow();
        List<Reason> reasons = new ArrayList<>();
        Changes all = new Changes();
        Action action = Action.ALLOWED;
        for (ActiveCondition condition : client.active()) {
            OneCondition.Outcome outcome = new OneCondition(maker, drill, written, condition).judge();
            reasons.addAll(outcome.reasons());
            all.addAll(outcome.changes());
            action = action.stricter(outcome.action());
        }
        action = action.stricter(combinations(true, written.facts(), client, reasons));
        if (action == Action.EXCLUDE) {
            return excluded(drill, written.facts(), reasons);
        }
        Optional<ChangedDrill> together = maker.make(drill, all);
        if (together.isEmpty()) {
            reasons.add(new Reason(
                    "changes", Action.EXCLUDE, "all changes together", Saying.phrase("safety-rule.contradict")));
            return excluded(drill, written.facts(), reasons);
        }
        return finish(drill, client, all, together.get(), action, reasons);
    }

    private Judgement finish(
            Drill drill,
            ClientSafety client,
            Changes changes,
            ChangedDrill changed,
            Action action,
            List<Reason> reasons) {
        List<LocalText> texts = new ArrayList<>();
        changed.variants().forEach(v -> texts.add(v.change()));
        texts.addAll(changes.texts());
        boolean broken = combinations(false, changed.facts(), client, reasons) == Action.EXCLUDE;
        Action strictest = action;
        for (ActiveCondition condition : client.active()) {
            OneCondition judged = new OneCondition(maker, drill, changed, condition);
            List<Reason> still = judged.stillBroken(changed.facts(), changes);
            reasons.addAll(still);
            broken |= !still.isEmpty();
            List<LocalText> cautions = judged.cautions(changed.facts());
            texts.addAll(cautions);
            if (!cautions.isEmpty()) {
                strictest = strictest.stricter(Action.CAUTION);
                reasons.add(new Reason(
                        condition.id(),
                        Action.CAUTION,
                        "caution",
                        OneCondition.ofCondition(condition, Saying.own(cautions.get(0)))));
            }
        }
        Set<Side> lower = lowerSides(changed.facts(), client);
        if (lower.size() > 1) {
            reasons.add(new Reason("side", Action.EXCLUDE, "on-side", Saying.phrase("safety-rule.both-sides")));
            broken = true;
        }
        List<LocalText> distinct = List.copyOf(new LinkedHashSet<>(texts));
        if (distinct.size() > MOST_TEXTS) {
            reasons.add(new Reason(
                    "texts",
                    Action.EXCLUDE,
                    "at most " + MOST_TEXTS + " sentences",
                    Saying.phrase("safety-rule.sentences").with("count", distinct.size())));
            broken = true;
        }
        if (broken) {
            return excluded(drill, changed.facts(), reasons);
        }
        return new Judgement(
                strictest,
                changed.drill(),
                changed.variants(),
                changes.limits(),
                lower.stream().findFirst(),
                reasons,
                distinct,
                changed.facts());
    }

    private static Judgement excluded(Drill drill, Facts facts, List<Reason> reasons) {
        List<Reason> strict = reasons.stream()
                .filter(r -> r.action() == Action.EXCLUDE)
                .distinct()
                .toList();
        return new Judgement(
                Action.EXCLUDE, drill, List.of(), DoseLimits.NONE, Optional.empty(), strict, List.of(), facts);
    }

    /** The rules for several conditions: those that read the drill as written, or those that read the changed one. */
    private static Action combinations(boolean asWritten, Facts facts, ClientSafety client, List<Reason> reasons) {
        Action action = Action.ALLOWED;
        for (SafetyRules.Combination combination : client.combinations()) {
            for (Rule rule : combination.rules()) {
                if (rule.asWritten() == asWritten
                        && rule.expression().evaluate(facts, SettingValues.NONE).mayBe()) {
                    action = action.stricter(rule.action());
                    reasons.add(new Reason(
                            combination.id(), rule.action(), rule.written(), Saying.own(combination.reason())));
                }
            }
        }
        return action;
    }

    private static Set<Side> lowerSides(Facts facts, ClientSafety client) {
        Set<Side> sides = new LinkedHashSet<>();
        if (facts.truth(Measure.ON_SIDE).mayBe()) {
            client.active().forEach(a -> a.lowerSide().ifPresent(sides::add));
        }
        return sides;
    }

    /** The drill's own names belong to the facts whatever measures it. */
    private Facts withLabels(Facts facts, Drill drill) {
        Set<String> labels = new LinkedHashSet<>(facts.labels());
        labels.add("drill:" + drill.id());
        labels.add("family:" + drill.family());
        drill.positions().forEach(p -> labels.add("position:" + p));
        drill.equipment().forEach(e -> labels.add("uses:" + e));
        drill.phases().forEach(p -> labels.add("phase:" + p.id()));
        rules.kindsOf(drill.id()).forEach(k -> labels.add("kind:" + k));
        drill.tags().kinds().forEach(k -> labels.add("kind:" + k));
        return new Facts(facts.numbers(), facts.truths(), labels);
    }

    /** What the author's tags and the rules each say about one condition, the rules without the tags. */
    public Difference compare(Drill drill, ActiveCondition condition) {
        ChangedDrill written = maker.make(drill, new Changes()).orElseThrow();
        Action tagged = drill.conditions().stream()
                .filter(t -> t.condition().equals(condition.id()))
                .map(ConditionTag::action)
                .reduce(Action.ALLOWED, Action::stricter);
        OneCondition.Outcome computed = new OneCondition(maker, drill, written, condition).byRulesAlone();
        return new Difference(
                tagged, computed.action(), !computed.changes().variants().isEmpty(), computed.reasons());
    }

    /**
     * The two independent judgements of one condition.
     *
     * @param needsVariant the rules are answered by a written version, not only by a smaller dose or a sentence
     * @param reasons what the rules go by
     */
    public record Difference(Action tagged, Action computed, boolean needsVariant, List<Reason> reasons) {
        public Difference {
            reasons = List.copyOf(reasons);
        }
    }
}
