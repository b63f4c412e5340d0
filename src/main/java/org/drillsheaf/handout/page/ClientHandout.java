package org.drillsheaf.handout.page;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * "Your practice": one phase, taken home.
 *
 * @param phase number of the phase, 1 to 4
 * @param phases names of all phases in order
 * @param purpose what this phase is for, one sentence
 * @param goodSign what it looks like when it goes well
 * @param minutes whole minutes of one session
 * @param sessionsPerWeek 1 to 7
 * @param things what the client needs at hand; empty when the floor is enough
 * @param cautions what this client has to mind, in the order of the drills
 * @param helpNow further signs to get help for at once, for this client only
 * @param setUp how to get ready at home, one sentence or two each
 * @param whileTraining what to mind during all drills, one sentence or two each
 * @param note paragraphs of the coach's own words to this client; empty when there are none
 */
public record ClientHandout(
        Frame frame,
        int phase,
        List<String> phases,
        Told purpose,
        Optional<Told> goodSign,
        int minutes,
        int sessionsPerWeek,
        List<Told> things,
        Optional<Meeting> next,
        List<Caution> cautions,
        List<String> helpNow,
        List<Told> setUp,
        List<Told> whileTraining,
        List<String> note,
        List<DrillBlock> drills)
        implements Document {

    /** The next appointment. */
    public record Meeting(LocalDate date, Optional<LocalTime> time) {}

    /**
     * One printed caution.
     *
     * @param drills numbers of the drills it is about; empty for all of them
     */
    public record Caution(List<Integer> drills, Told text) {
        public Caution {
            drills = List.copyOf(drills);
        }
    }

    public ClientHandout {
        phases = List.copyOf(phases);
        things = List.copyOf(things);
        cautions = List.copyOf(cautions);
        helpNow = List.copyOf(helpNow);
        setUp = List.copyOf(setUp);
        whileTraining = List.copyOf(whileTraining);
        note = List.copyOf(note);
        drills = List.copyOf(drills);
    }

    @Override
    public DocumentKind kind() {
        return DocumentKind.CLIENT_HANDOUT;
    }
}
