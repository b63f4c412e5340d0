package org.drillsheaf.drill.safety;

import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;

/**
 * A condition that holds for a client on the day of a visit.
 *
 * @param sides the sides concerned; empty when none was said
 * @param because id of the condition that switched it on; empty when it was told
 */
public record ActiveCondition(Condition condition, SettingValues settings, Set<Side> sides, Optional<String> because) {

    public ActiveCondition {
        sides = Set.copyOf(sides);
    }

    public String id() {
        return condition.id();
    }

    /** The side to lie on, when the condition leaves only one. */
    Optional<Side> lowerSide() {
        return condition.lieOnOtherSide() && sides.size() == 1
                ? Optional.of(sides.iterator().next().opposite())
                : Optional.empty();
    }
}
