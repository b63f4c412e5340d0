package org.drillsheaf.screen;

import java.util.Optional;

/**
 * A condition that follows from the screen itself. It holds at once unless the coach declined it with a reason.
 *
 * @param id condition id, for example {@code hypermobility}
 * @param because why, in words
 * @param declined the coach's reason, when declined
 */
public record ScreenCondition(String id, String because, Optional<String> declined) {

    public boolean holds() {
        return declined.isEmpty();
    }
}
