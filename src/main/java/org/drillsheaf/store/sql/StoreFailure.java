package org.drillsheaf.store.sql;

import org.drillsheaf.Problem;

/**
 * The record cannot be used, or not for this. Carries the words for the person at the desk, with the steps that help; holds
 * no value from the record and no passphrase.
 */
public final class StoreFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What is the matter; each has its own way out. */
    public enum Kind {
        NOT_THERE,
        ALREADY_THERE,
        IN_USE,
        WRONG_PASSPHRASE,
        DAMAGED,
        NEWER,
        OLDER,
        DISK_FULL,
        READ_ONLY,
        SERVER_AWAY,
        BUSY,
        CLOSED,
        /** What was asked for does not fit what is kept; nothing was changed. */
        REFUSED,
        UNEXPECTED
    }

    private final Kind kind;
    private final String place;
    private final String what;
    private final String remedy;

    /** Takes no cause: the engine's own complaints quote what was to be written. */
    public StoreFailure(Kind kind, String place, String what, String remedy) {
        super(kind + ": " + what);
        this.kind = kind;
        this.place = place;
        this.what = what;
        this.remedy = remedy;
    }

    public Kind kind() {
        return kind;
    }

    /** For a person: what is wrong, where, and the steps that help. */
    public Problem problem() {
        return Problem.error(place, 0, what, remedy);
    }
}
