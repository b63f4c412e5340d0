package org.drillsheaf.cli;

/** What the program tells the shell. */
final class ExitCode {
    static final int DONE = 0;
    /** It cannot be done for this client: a safety question, or nothing fits. */
    static final int CANNOT = 1;

    static final int BAD_INPUT = 2;

    private ExitCode() {}
}
