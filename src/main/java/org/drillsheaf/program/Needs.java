package org.drillsheaf.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.Reading;

/**
 * What the builder gets: what the reading, the client and the coach ask for, phase by phase, with where each part comes from.
 *
 * @param start the phase to work on now
 * @param startReasons why, each one clause
 * @param phases all four, in order
 * @param side the side named by the reading; sided drills begin there
 * @param changes what the reading changed
 * @param effortCap most effort of any drill, whatever the phase or the coach says
 * @param carriedOver least number of drills that neighbouring phases share
 * @param before the program of the visit before; empty for a first program
 * @param remarks for the coach, each a sentence
 */
public record Needs(
        Client client,
        LocalDate date,
        Reading reading,
        Phase start,
        List<Saying> startReasons,
        List<PhaseNeeds> phases,
        Optional<Side> side,
        List<ReadingChange> changes,
        int effortCap,
        ClientSafety safety,
        CoachWishes wishes,
        int carriedOver,
        Optional<Program> before,
        List<Saying> remarks) {
    public Needs {
        startReasons = List.copyOf(startReasons);
        phases = List.copyOf(phases);
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
    }

    public PhaseNeeds phase(Phase phase) {
        return phases.get(phase.ordinal());
    }

    /** The phases from the one to work on. */
    public List<PhaseNeeds> ahead() {
        return phases.subList(start.ordinal(), phases.size());
    }

    /** The same with other minutes and equipment, to see what they would gain. */
    Needs withClient(Client other) {
        return new Needs(
                other,
                date,
                reading,
                start,
                startReasons,
                phases,
                side,
                changes,
                effortCap,
                safety,
                wishes,
                carriedOver,
                before,
                remarks);
    }
}
