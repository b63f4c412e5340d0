package org.drillsheaf.drill.check;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.drill.safety.Condition;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.drill.safety.SettingDefinition;

/**
 * The client whom the check asks about a condition: that one alone, on the right side, 40 years old, its questions answered
 * as they usually are. A real client's unanswered questions stay cautious; here they would only hide what a drill itself
 * shows.
 */
record UsualClient(SafetyRules rules, LocalDate today) {
    private static final int AGE = 40;

    /** Answers that end a waiting time or tell the usual case; everything else stays cautious. */
    private static final Map<String, String> ANSWERS = Map.ofEntries(
            Map.entry("floor-allowed", "yes"),
            Map.entry("approach-known", "yes"),
            Map.entry("back-rules-too", "no"),
            Map.entry("limits-written", "yes"),
            Map.entry("full-weight-allowed", "yes"),
            Map.entry("clinician-cleared", "yes"),
            Map.entry("cleared", "yes"),
            Map.entry("chest-cut-recent", "no"),
            Map.entry("device-recent", "no"),
            Map.entry("legs-give-way", "no"),
            Map.entry("consent", "yes"),
            Map.entry("clinician-checked", "yes"));

    /**
     * The client.
     *
     * @param weeksAgo since when the condition holds
     * @param seen what the coach has seen
     */
    ClientSafety with(Condition condition, int weeksAgo, Set<String> seen) {
        Map<String, String> answered = new LinkedHashMap<>();
        for (SettingDefinition setting : condition.settings().values()) {
            String answer = ANSWERS.get(setting.id());
            if (answer != null) {
                answered.put(setting.id(), answer);
            }
        }
        ClientCondition told = new ClientCondition(
                condition.id(),
                Set.of(Side.RIGHT),
                Optional.of(today.minusWeeks(weeksAgo)),
                answered,
                Optional.empty(),
                Set.of(),
                0);
        return ClientSafety.of(rules, List.of(told), today, AGE, seen);
    }
}
