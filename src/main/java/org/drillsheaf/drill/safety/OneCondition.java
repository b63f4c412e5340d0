package org.drillsheaf.drill.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.ConditionTag;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.saying.Saying;

/**
 * One condition and one drill. A rule that would change or exclude the drill is answered by the author's variant for this
 * condition, then by a variant the rule names, then by a smaller dose; the changed drill has to pass every rule of the
 * condition.
 */
record OneCondition(ChangedDrill.Maker maker, Drill drill, ChangedDrill written, ActiveCondition active) {

    /**
     * What came out.
     *
     * @param changes the changes that make the drill pass; nothing when it is excluded
     */
    public record Outcome(Action action, Changes changes, List<Reason> reasons) {
        public Outcome {
            reasons = List.copyOf(reasons);
        }
    }

    Outcome judge() {
        Optional<ConditionTag> tag = strictestTag();
        if (tag.isPresent() && tag.get().action() == Action.EXCLUDE) {
            return new Outcome(
                    Action.EXCLUDE,
                    new Changes(),
                    List.of(reason(Action.EXCLUDE, "tag", Saying.own(tag.get().reason()))));
        }
        Optional<String> tagged = tag.filter(t -> t.action() == Action.MODIFY).flatMap(ConditionTag::variant);
        return answer(tagged);
    }

    /** The rules' own word, the author's variant being only an offer to answer them with. */
    Outcome byRulesAlone() {
        boolean fires = !fired(written.facts(), Action.EXCLUDE).isEmpty()
                || !fired(written.facts(), Action.MODIFY).isEmpty();
        if (fires) {
            Optional<String> tagged =
                    strictestTag().filter(t -> t.action() == Action.MODIFY).flatMap(ConditionTag::variant);
            return answer(tagged);
        }
        boolean cautions = !fired(written.facts(), Action.CAUTION).isEmpty();
        return new Outcome(cautions ? Action.CAUTION : Action.ALLOWED, new Changes(), List.of());
    }

    private Outcome answer(Optional<String> tagged) {
        List<Rule> excludes = fired(written.facts(), Action.EXCLUDE);
        List<Rule> modifies = fired(written.facts(), Action.MODIFY);
        if (excludes.isEmpty() && modifies.isEmpty() && tagged.isEmpty()) {
            return new Outcome(Action.ALLOWED, new Changes(), List.of());
        }
        Changes changes = new Changes();
        tagged.filter(v -> drill.variant(v).isPresent()).ifPresent(changes::addVariant);
        if (changes.isEmpty() && !excludes.isEmpty()) {
            modifies.forEach(rule -> firstVariant(rule).ifPresent(changes::addVariant));
        }
        if (changes.isEmpty() && !excludes.isEmpty()) {
            return excluded(excludes, written.facts());
        }
        Optional<ChangedDrill> changed = maker.make(drill, changes);
        if (changed.isEmpty()) {
            return excluded(excludes.isEmpty() ? modifies : excludes, written.facts());
        }
        List<Rule> open = new ArrayList<>(fired(changed.get().facts(), Action.MODIFY));
        modifies.stream()
                .filter(r -> r.answeredByVariant() && !open.contains(r))
                .forEach(open::add);
        for (Rule rule : open) {
            answer(rule, changes, tagged.isPresent());
        }
        return checked(changes, excludes.isEmpty() ? modifies : excludes);
    }

    /** Adds what answers a rule that is still open: a variant it names, its smaller dose, or its sentence. */
    private void answer(Rule rule, Changes changes, boolean authorAnswered) {
        if (rule.answeredByVariant() && (authorAnswered || changes.hasVariantOf(rule.variants()))) {
            return;
        }
        Optional<String> variant = firstVariant(rule);
        if (variant.isPresent()) {
            changes.addVariant(variant.get());
            return;
        }
        changes.addLimits(rule.limits());
        if (rule.answeredByVariant() || !rule.limits().isNone()) {
            rule.text().ifPresent(changes::addText);
        }
    }

    private Outcome checked(Changes changes, List<Rule> because) {
        Optional<ChangedDrill> changed = maker.make(drill, changes);
        if (changed.isEmpty()) {
            return excluded(because, written.facts());
        }
        List<Reason> still = stillBroken(changed.get().facts(), changes);
        if (!still.isEmpty()) {
            return new Outcome(Action.EXCLUDE, new Changes(), still);
        }
        List<Reason> reasons = new ArrayList<>();
        because.forEach(r -> reasons.add(reason(Action.MODIFY, r.written(), words(r, written.facts()))));
        strictestTag()
                .filter(t -> t.action() == Action.MODIFY)
                .ifPresent(t -> reasons.add(reason(Action.MODIFY, "tag", Saying.own(t.reason()))));
        return new Outcome(Action.MODIFY, changes, reasons);
    }

    /** The rules that the changed drill breaks still. */
    List<Reason> stillBroken(Facts facts, Changes changes) {
        List<Reason> reasons = new ArrayList<>();
        for (Rule rule : fired(facts, Action.EXCLUDE)) {
            reasons.add(reason(Action.EXCLUDE, rule.written(), words(rule, facts)));
        }
        for (Rule rule : fired(facts, Action.MODIFY)) {
            if (!isAnswered(rule, changes)) {
                reasons.add(reason(
                        Action.EXCLUDE,
                        rule.written(),
                        Saying.joined(
                                Saying.Joint.SEMICOLON, words(rule, facts), Saying.phrase("safety-rule.no-change"))));
            }
        }
        return reasons;
    }

    private boolean isAnswered(Rule rule, Changes changes) {
        if (!rule.answeredByVariant()) {
            return false;
        }
        boolean byAuthor = strictestTag()
                .filter(t -> t.action() == Action.MODIFY)
                .flatMap(ConditionTag::variant)
                .filter(changes.variants()::contains)
                .isPresent();
        boolean byText = rule.text().filter(changes.texts()::contains).isPresent();
        return byAuthor || byText || changes.hasVariantOf(rule.variants());
    }

    List<LocalText> cautions(Facts facts) {
        List<LocalText> texts = new ArrayList<>();
        fired(facts, Action.CAUTION).forEach(r -> r.text().ifPresent(texts::add));
        drill.conditions().stream()
                .filter(t -> t.condition().equals(active.id()) && t.action() == Action.CAUTION)
                .forEach(t -> texts.add(t.reason()));
        return texts;
    }

    private List<Rule> fired(Facts facts, Action action) {
        return active.condition().rules().stream()
                .filter(r -> r.action() == action)
                .filter(r -> r.expression().evaluate(facts, active.settings()).mayBe())
                .toList();
    }

    private Optional<ConditionTag> strictestTag() {
        return drill.conditions().stream()
                .filter(t -> t.condition().equals(active.id()))
                .max(java.util.Comparator.comparing(ConditionTag::action));
    }

    private Optional<String> firstVariant(Rule rule) {
        return rule.variants().stream()
                .filter(v -> drill.variant(v).isPresent())
                .findFirst();
    }

    private Outcome excluded(List<Rule> because, Facts facts) {
        return new Outcome(
                Action.EXCLUDE,
                new Changes(),
                because.stream()
                        .map(r -> reason(Action.EXCLUDE, r.written(), words(r, facts)))
                        .toList());
    }

    private Reason reason(Action action, String rule, Saying words) {
        return new Reason(active.id(), action, rule, words);
    }

    private Saying words(Rule rule, Facts facts) {
        Saying measured = Saying.joined(Saying.Joint.COMMA, rule.expression().explain(facts, active.settings()));
        return ofCondition(active, measured.isEmpty() ? Saying.written(rule.written()) : measured);
    }

    /** What is said because of a condition, with its name before it. */
    static Saying ofCondition(ActiveCondition active, Saying words) {
        return Saying.phrase("safety-rule.of")
                .with("condition", Saying.name(Saying.Name.Kind.CONDITION, active.id()))
                .with("words", words);
    }
}
