package org.drillsheaf.exchange;

import org.drillsheaf.Problem;

/** Where a drill that comes in was written, so that a mistake in it can be told there. */
public interface Origin {
    /** A name that no other drill of the same file has. */
    String name();

    /**
     * A number for a place of the drill.
     *
     * @param pointer the place as a JSON pointer
     */
    int line(String pointer);

    /** A problem that was found with the numbers of {@link #line}, told in the words of the file. */
    Problem told(Problem problem);
}
