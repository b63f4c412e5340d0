package org.drillsheaf.store.record;

import java.time.Instant;

/**
 * One edition of a drill.
 *
 * @param sha256 of its content, as {@code DrillHash} gives it
 * @param revision number that its file carries
 * @param yaml the drill's file, for {@code CatalogueReader}
 */
public record DrillRevision(
        String drill, String sha256, int revision, Origin origin, String yaml, String savedBy, Instant savedAt) {

    /** Where an edition came from. */
    public enum Origin {
        /** The catalogue that comes with the program. */
        STARTER,
        /** The clinic. */
        HOUSE
    }
}
