package org.drillsheaf.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.screen.rule.Rule;

/**
 * Everything about presentations that is written as data.
 *
 * @param list in the order of leading
 * @param none shown when every name is known not to hold
 * @param definitions named rules as written, for the gates
 * @param groups named lists of rules as written, for the gates
 */
public record Presentations(
        List<Presentation> list,
        Presentation none,
        LayerRules layers,
        List<ConditionRule> conditions,
        List<Presentation.RestrictionRule> laxRestrictions,
        Set<String> notProgressWhenLax,
        List<ContradictionRule> contradictions,
        Map<String, YamlNode> definitions,
        Map<String, YamlNode> groups) {

    /**
     * @param underneathNames presentations under which a side may lie
     * @param sideWhen rule with {@code this} side
     */
    public record LayerRules(
            Set<String> underneathNames,
            Rule requires,
            Rule sideWhen,
            LocalText underneathWords,
            String onTopOf,
            String onTopName,
            Rule onTopWhen,
            LocalText onTopWords,
            Rule hipFronts,
            LocalText hipFrontsWords,
            Optional<String> hipFrontsGoal,
            Side expectedFirst) {}

    /** A condition that follows from the screen. */
    public record ConditionRule(String id, Rule when, LocalText words) {}

    /** Findings that do not go together. */
    public record ContradictionRule(String id, Rule when, LocalText meaning, LocalText nextStep, boolean refer) {}

    public Presentations {
        list = List.copyOf(list);
        conditions = List.copyOf(conditions);
        laxRestrictions = List.copyOf(laxRestrictions);
        notProgressWhenLax = Set.copyOf(notProgressWhenLax);
        contradictions = List.copyOf(contradictions);
        definitions = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(definitions));
        groups = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(groups));
    }

    public Optional<Presentation> presentation(String id) {
        return list.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
