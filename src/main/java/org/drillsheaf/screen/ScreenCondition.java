package org.drillsheaf.screen;

import java.util.Optional;
import org.drillsheaf.saying.Saying;

/**
 * A condition that follows from the screen itself. It holds at once unless the coach declined it with a reason.
 *
 * @param id condition id, for example {@code hypermobility}
 * @param because why
 * @param declined the coach's reason, when declined
 */
public record ScreenCondition(String id, Saying because, Optional<String> declined) {

    public boolean holds() {
        return declined.isEmpty();
    }
}
