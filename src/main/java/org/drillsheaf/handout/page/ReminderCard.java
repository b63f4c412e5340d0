package org.drillsheaf.handout.page;

import java.util.List;

/**
 * Pictures, names and doses of one phase, to fold into a tent or hang on a door.
 *
 * @param phaseName name of the phase
 * @param minutes whole minutes of one session
 * @param sessionsPerWeek 1 to 7
 */
public record ReminderCard(Frame frame, String phaseName, int minutes, int sessionsPerWeek, List<DrillBlock> drills)
        implements Document {
    public ReminderCard {
        drills = List.copyOf(drills);
    }

    /** The card that goes with a handout. */
    public static ReminderCard of(ClientHandout handout) {
        return new ReminderCard(
                handout.frame(),
                handout.phases().get(handout.phase() - 1),
                handout.minutes(),
                handout.sessionsPerWeek(),
                handout.drills());
    }

    @Override
    public DocumentKind kind() {
        return DocumentKind.REMINDER_CARD;
    }
}
