package org.drillsheaf.client;

import java.util.Map;
import java.util.Set;

/**
 * The ids that a client's file may use.
 *
 * @param conditions condition id to the names of its settings
 * @param safetyQuestions ids of the safety questions
 */
public record KnownIds(
        Map<String, Set<String>> conditions,
        Set<String> equipment,
        Set<String> positions,
        Set<String> goals,
        Set<String> safetyQuestions) {

    public KnownIds {
        conditions = Map.copyOf(conditions);
        equipment = Set.copyOf(equipment);
        positions = Set.copyOf(positions);
        goals = Set.copyOf(goals);
        safetyQuestions = Set.copyOf(safetyQuestions);
    }
}
