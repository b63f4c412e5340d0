package org.drillsheaf.program.build;

import java.util.Comparator;
import java.util.List;

/** Goes straight down the tree to a first program, so that the search has something to rule parts out with. */
final class Dive {
    /** Parts of a node that are worked out before the best of them is followed. */
    private static final int WIDTH = 12;
    /** Nodes after which the dive is left to the search proper. */
    private static final int LONGEST = 400;

    private final ProgramSearch search;
    private int nodes;

    Dive(ProgramSearch search) {
        this.search = search;
    }

    void from(Node root) {
        if (search.workOut(root)) {
            follow(root);
        }
    }

    /** Returns true once a program was found. */
    private boolean follow(Node node) {
        List<Node> parts = search.open(node);
        if (search.hasAnswer()) {
            return true;
        }
        for (int start = 0; start < parts.size(); start += WIDTH) {
            List<Node> some = parts.subList(start, Math.min(parts.size(), start + WIDTH)).stream()
                    .filter(part -> nodes++ < LONGEST && search.workOut(part))
                    .sorted(Comparator.comparingLong(part -> part.bound))
                    .toList();
            for (Node part : some) {
                if (follow(part)) {
                    return true;
                }
            }
            if (nodes >= LONGEST) {
                return false;
            }
        }
        return false;
    }
}
