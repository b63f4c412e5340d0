package org.drillsheaf.exchange;

import java.util.List;
import org.drillsheaf.Problem;

/**
 * What a file brings.
 *
 * @param drills those that could be read
 * @param rejected mistakes of single drills, which leave the others alone
 * @param notes what is worth knowing and needs nothing done
 */
public record Incoming(List<IncomingDrill> drills, List<Problem> rejected, List<Problem> notes) {
    public Incoming {
        drills = List.copyOf(drills);
        rejected = List.copyOf(rejected);
        notes = List.copyOf(notes);
    }
}
