package org.drillsheaf.store.record;

import java.time.Instant;
import java.util.UUID;

/**
 * That a client was erased. Names nobody.
 *
 * @param client the key that the client had
 */
public record Erasure(UUID client, String by, Instant at) {}
