package org.drillsheaf.drill.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillsheaf.Source;
import org.drillsheaf.drill.Action;

/**
 * A limit on which sources disagree, or that stands there from memory or by the house's own word. A licensed clinician has
 * to confirm it; until then it stays at its strict value.
 *
 * @param condition its name; empty for a rule over all conditions
 * @param what a setting's question, or that it is the condition's rules
 * @param strict what holds now
 * @param disputed sources disagree, or the data say that a clinician has to confirm it
 */
public record LimitToConfirm(String condition, String what, String strict, Source source, boolean disputed) {
    private static final Set<Source.Kind> UNREAD = Set.of(Source.Kind.HOUSE, Source.Kind.MEMORY);
    private static final Pattern NUMBER = Pattern.compile(">=?\\s*[a-z0-9-]+");
    private static final Source HOUSE_RULE = new Source(Source.Kind.HOUSE, "House rule.");

    /** All of them, in the order of the file: for each condition its rules that hold a number, then its settings. */
    public static List<LimitToConfirm> of(SafetyRules rules) {
        List<LimitToConfirm> all = new ArrayList<>();
        for (Condition condition : rules.conditions().values()) {
            String name = condition.name().english();
            all.add(new LimitToConfirm(
                    name, "Its rules with numbers", numbers(condition), condition.source(), condition.disputed()));
            for (SettingDefinition setting : condition.settings().values()) {
                all.add(new LimitToConfirm(
                        name, setting.name().english(), setting.cautious(), setting.source(), setting.disputed()));
            }
        }
        for (SafetyRules.ByAge byAge : rules.byAge()) {
            String name = rules.condition(byAge.condition())
                    .map(c -> c.name().english())
                    .orElse(byAge.condition());
            String until = byAge.years() + " years, until seen otherwise: " + byAge.unlessSeen();
            all.add(new LimitToConfirm(name, "Holds by age", until, HOUSE_RULE, false));
        }
        String joined = "from " + rules.inPersonFrom() + " conditions of joints, heart and belly on";
        all.add(new LimitToConfirm("", "No program at home", joined, HOUSE_RULE, false));
        return all.stream()
                .filter(limit -> limit.disputed || UNREAD.contains(limit.source.kind()))
                .toList();
    }

    private static String numbers(Condition condition) {
        String numbers = Stream.of(
                        numbers(condition, Action.EXCLUDE, "not offered: "),
                        numbers(condition, Action.MODIFY, "changed: "))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(". "));
        return numbers.isEmpty() ? "no number, see its settings and what it switches on" : numbers;
    }

    private static String numbers(Condition condition, Action action, String words) {
        List<String> written = condition.rules().stream()
                .filter(rule -> rule.action() == action)
                .map(Rule::written)
                .filter(rule -> NUMBER.matcher(rule).find())
                .distinct()
                .toList();
        return written.isEmpty() ? "" : words + String.join("; ", written);
    }
}
