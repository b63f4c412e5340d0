package org.drillsheaf.handout.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A text of which some parts stand out.
 *
 * @param runs in reading order, none empty
 */
public record Wording(List<Run> runs) {
    /** What a part of a text is. */
    public enum Kind {
        PLAIN,
        /** Printed bold. */
        STRONG,
        /** A number that was worked out for this client; never broken over two lines. */
        OWN
    }

    /** A part of a text that looks the same throughout. */
    public record Run(String text, Kind kind) {}

    public Wording {
        runs = List.copyOf(runs);
    }

    public static Wording plain(String text) {
        return new Wording(List.of(new Run(text, Kind.PLAIN)));
    }

    /** Reads a text in which {@code *words*} stand out. A star without a partner is printed as it is. */
    public static Wording marked(String text) {
        return split(text, '*', Kind.STRONG);
    }

    /** Reads a text in which {@code ⟦numbers⟧} are the client's own. */
    public static Wording withOwnNumbers(String text) {
        List<Run> runs = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            int open = text.indexOf('⟦', at);
            int close = open < 0 ? -1 : text.indexOf('⟧', open);
            if (close < 0) {
                break;
            }
            add(runs, text.substring(at, open), Kind.PLAIN);
            add(runs, text.substring(open + 1, close), Kind.OWN);
            at = close + 1;
        }
        add(runs, text.substring(at), Kind.PLAIN);
        return new Wording(runs);
    }

    private static Wording split(String text, char mark, Kind kind) {
        List<Run> runs = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            int open = text.indexOf(mark, at);
            int close = open < 0 ? -1 : text.indexOf(mark, open + 1);
            if (close < 0) {
                break;
            }
            add(runs, text.substring(at, open), Kind.PLAIN);
            add(runs, text.substring(open + 1, close), kind);
            at = close + 1;
        }
        add(runs, text.substring(at), Kind.PLAIN);
        return new Wording(runs);
    }

    private static void add(List<Run> runs, String text, Kind kind) {
        if (!text.isEmpty()) {
            runs.add(new Run(text, kind));
        }
    }

    /** The words alone. */
    public String text() {
        StringBuilder text = new StringBuilder();
        runs.forEach(run -> text.append(run.text()));
        return text.toString();
    }
}
