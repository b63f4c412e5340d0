package org.drillsheaf.drill;

import java.util.Map;
import java.util.Set;

/**
 * The vocabularies that a drill's file may use, each by id in the order of its file.
 *
 * @param conditions ids of the conditions
 * @param kinds kinds of movement that the condition rules name
 */
public record DrillWords(
        Map<String, Goal> goals,
        Map<String, BodyPosition> positions,
        Map<String, EquipmentItem> equipment,
        Set<String> conditions,
        Set<String> kinds) {

    public DrillWords {
        goals = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(goals));
        positions = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(positions));
        equipment = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(equipment));
        conditions = java.util.Collections.unmodifiableSet(new java.util.LinkedHashSet<>(conditions));
        kinds = java.util.Collections.unmodifiableSet(new java.util.LinkedHashSet<>(kinds));
    }
}
