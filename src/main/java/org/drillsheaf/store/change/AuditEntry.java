package org.drillsheaf.store.change;

import java.time.Instant;
import java.util.List;

/**
 * One deed in the audit. Holds no value.
 *
 * @param number from 1 without a gap, in the order in which the deeds were committed
 * @param who name of the coach
 * @param record key of the record that was touched; for drills, coaches and settings their id
 * @param part of a client: {@code client}, {@code conditions}, {@code visit:2026-03-05}; empty when it has no parts
 * @param version of the record or part after the deed; 0 when it has none
 * @param fields names of the fields that changed, as paths; the ids of conditions are left out of them
 * @param chain SHA-256 over the entry before and this one, so that nobody can take one out unnoticed
 */
public record AuditEntry(
        long number,
        Instant time,
        String who,
        Deed deed,
        Kind kind,
        String record,
        String part,
        long version,
        List<String> fields,
        String chain) {

    /** What was done. */
    public enum Deed {
        ADDED,
        CHANGED,
        REMOVED,
        SIGNED,
        HANDED_OUT,
        PRINTED_AGAIN,
        CLASHED,
        SETTLED,
        EXPORTED,
        ERASED,
        COPIED,
        RESTORED
    }

    /** What it was done to. */
    public enum Kind {
        CLIENT,
        READING,
        PROGRAM,
        DOCUMENT,
        DRILL,
        COACH,
        SETTING,
        STORE
    }

    public AuditEntry {
        fields = List.copyOf(fields);
    }
}
