package org.drillsheaf.store.record;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * A line in the list of clients.
 *
 * @param born year or day as written
 */
public record ClientSummary(
        UUID key, String id, String name, String coach, String born, Optional<LocalDate> lastVisit) {}
