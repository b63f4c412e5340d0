package org.drillsheaf.cli;

import org.drillsheaf.store.sql.StoreFailure;

/** What the program tells the shell. */
final class ExitCode {
    static final int DONE = 0;
    /** It cannot be done: a safety question, nothing fits, or the record cannot be used now. */
    static final int CANNOT = 1;

    static final int BAD_INPUT = 2;

    private ExitCode() {}

    /** Of a record that cannot be used: bad input when another argument would help, else “cannot be done”. */
    static int of(StoreFailure failure) {
        return switch (failure.kind()) {
            case NOT_THERE, ALREADY_THERE, WRONG_PASSPHRASE, REFUSED -> BAD_INPUT;
            default -> CANNOT;
        };
    }
}
