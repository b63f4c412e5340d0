package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the program as a user would start it, with what it printed.
 *
 * @param code the exit code
 */
record CommandRun(int code, String out, String err) {

    static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Drillsheaf.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new CommandRun(code, out.toString(), err.toString());
    }
}
