package org.drillsheaf.store.record;

/** What became of a save. */
public sealed interface SaveResult {

    /** It is on the disk under this version. */
    record Saved(long version) implements SaveResult {}

    /** Somebody else saved the part first. Nothing was overwritten; what came second is kept in the clash until it is settled. */
    record Clashed(PartClash clash) implements SaveResult {}
}
