package org.drillsheaf.program;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/**
 * The drills of one client, phase by phase, with the reasons for each.
 *
 * @param client id of the client
 * @param date of the visit it was built for
 * @param start the phase the client works on now
 * @param startReasons why it starts there, each one clause
 * @param phases all four, in order
 * @param known ids of drills taught in earlier programs, sorted
 * @param changes against the program before; empty for a first program
 * @param remarks for the coach, each a sentence
 */
public record Program(
        String client,
        LocalDate date,
        Phase start,
        List<Saying> startReasons,
        List<PhasePlan> phases,
        Proof proof,
        List<String> known,
        List<ProgramChange> changes,
        List<Saying> remarks)
        implements BuildResult {
    public Program {
        startReasons = List.copyOf(startReasons);
        phases = List.copyOf(phases);
        known = List.copyOf(known);
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
        if (phases.size() != Phase.values().length) {
            throw new IllegalArgumentException("a program shows all four phases");
        }
    }

    public PhasePlan phase(Phase phase) {
        return phases.get(phase.ordinal());
    }

    /** The phase the client works on now. */
    public PhasePlan now() {
        return phase(start);
    }

    public Optional<Entry> entry(Phase phase, String drill) {
        return phase(phase).entries().stream()
                .filter(e -> e.drill().equals(drill))
                .findFirst();
    }
}
