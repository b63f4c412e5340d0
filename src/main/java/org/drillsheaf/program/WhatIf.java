package org.drillsheaf.program;

/**
 * What a change of the client's means would gain.
 *
 * @param change for example {@code a band}
 * @param difference the program with the change minus the one as it is; negative numbers are gains
 */
public record WhatIf(String change, Cost difference) {
    public boolean gains() {
        return difference.coverage() < 0 || difference.coverage() == 0 && difference.minutes() < 0;
    }

    public String words() {
        return "With " + change + ": " + (gains() ? difference.words() : "nothing gained") + ".";
    }
}
