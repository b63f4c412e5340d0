package org.drillsheaf.store.record;

/** What became of a save. */
public sealed interface SaveResult {

    /**
     * It is on the disk under this version.
     *
     * @param waits whether that is this machine's disk only, because the server is away: then the version is the one that it
     *     gets in its turn, unless another desk was first, and a clash is kept
     */
    record Saved(long version, boolean waits) implements SaveResult {
        public Saved(long version) {
            this(version, false);
        }
    }

    /** Somebody else saved the part first. Nothing was overwritten; what came second is kept in the clash until it is settled. */
    record Clashed(PartClash clash) implements SaveResult {}
}
