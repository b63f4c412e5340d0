package org.drillsheaf.store.record;

import java.time.Instant;
import java.util.Optional;

/**
 * One version of one part of a client's record.
 *
 * @param version from 1; saving names the version it started from
 * @param content empty when the part was removed
 */
public record Part(PartKey key, long version, Optional<Content> content, String savedBy, Instant savedAt) {}
