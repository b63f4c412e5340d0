package org.drillsheaf;

/**
 * One thing that is wrong in somebody's input, told so that they can mend it.
 *
 * @param file the file as the user named it
 * @param line first line that is concerned, from 1; 0 when the whole file is meant
 * @param what what is wrong, one sentence without a full stop
 * @param remedy what would be right, one sentence without a full stop
 */
public record Problem(Severity severity, String file, int line, String what, String remedy) {

    /** How much it matters: errors stop the work, warnings should be mended, advice may be left. */
    public enum Severity {
        ERROR,
        WARNING,
        ADVICE
    }

    public static Problem error(String file, int line, String what, String remedy) {
        return new Problem(Severity.ERROR, file, line, what, remedy);
    }

    public static Problem warning(String file, int line, String what, String remedy) {
        return new Problem(Severity.WARNING, file, line, what, remedy);
    }

    public static Problem advice(String file, int line, String what, String remedy) {
        return new Problem(Severity.ADVICE, file, line, what, remedy);
    }

    /** One line for a terminal: {@code file:line: what. Remedy.} */
    public String message() {
        String place = line > 0 ? file + ":" + line : file;
        return place + ": " + what + ". " + remedy + ".";
    }
}
