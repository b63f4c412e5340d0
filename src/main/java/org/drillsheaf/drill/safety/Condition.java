package org.drillsheaf.drill.safety;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * Something a client lives with, and what it does to drills.
 *
 * @param group {@code joints}, {@code heart}, {@code belly}, {@code practical} or {@code names}
 * @param yours "your new hip": how a client page names it
 * @param sided whether it has a side
 * @param lieOnOtherSide lying on the side is only for the other side
 * @param settings by id, in the order of the file
 * @param applies whether its rules hold at all under the settings
 * @param waits reasons to wait with the program
 * @param barredGoals goals that get weight 0
 * @param switchesOn other conditions that come with it
 * @param clientText what the client has to know, once a handout
 */
public record Condition(
        String id,
        String group,
        LocalText name,
        LocalText meaning,
        LocalText yours,
        boolean sided,
        boolean lieOnOtherSide,
        Map<String, SettingDefinition> settings,
        Expression applies,
        List<Wait> waits,
        List<Rule> rules,
        Set<String> barredGoals,
        List<Link> switchesOn,
        Optional<LocalText> clientText,
        Source source,
        boolean disputed) {

    public Condition {
        settings = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(settings));
        waits = List.copyOf(waits);
        rules = List.copyOf(rules);
        barredGoals = Set.copyOf(barredGoals);
        switchesOn = List.copyOf(switchesOn);
    }

    /** The program waits while the expression holds. */
    public record Wait(Expression expression, LocalText reason) {}

    /**
     * Another condition that comes with this one while the expression holds.
     *
     * @param settings settings that the other condition gets
     */
    public record Link(String condition, Expression expression, Map<String, String> settings) {
        public Link {
            settings = Map.copyOf(settings);
        }
    }
}
