package org.drillsheaf.drill;

/**
 * The one time model: how long a drill takes at a dose. Set-up and change of position, then sets × sides × work, ten seconds
 * for every change of side, and the rest between sets. All constants are common practice, no source.
 */
public final class DoseTime {
    /** Seconds to set up and get into the position. */
    public static final int SET_UP_SECONDS = 40;
    /** Seconds to change the side; sides alternate set by set. */
    public static final int SIDE_CHANGE_SECONDS = 10;
    /** Seconds of one step in walking. */
    public static final int STEP_SECONDS = 2;

    private DoseTime() {}

    /** Seconds of rest between two sets: 30 up to effort 3, 45 at effort 4, 60 above. */
    public static int restSeconds(int effort) {
        if (effort <= 3) {
            return 30;
        }
        return effort == 4 ? 45 : 60;
    }

    /** Seconds of work in one set on one side. */
    public static double workSeconds(Dose dose, Breathing breathing, int each) {
        return switch (dose.count()) {
            case BREATHS -> each * breathing.cycleSeconds();
            case REPETITIONS -> each * dose.repetitionSeconds();
            case STEPS -> (double) each * STEP_SECONDS;
            case MINUTES -> each * 60.0;
        };
    }

    /** Seconds of the whole drill at this dose, not rounded. */
    public static double seconds(Dose dose, Breathing breathing, Dose.Chosen chosen) {
        double work = chosen.sets() * chosen.sides() * workSeconds(dose, breathing, chosen.each());
        int turns = chosen.sets() * chosen.sides() - 1;
        int sideChanges = chosen.sides() > 1 ? turns : 0;
        double rest = (chosen.sets() - 1) * (double) restSeconds(chosen.effort());
        return SET_UP_SECONDS + work + sideChanges * (double) SIDE_CHANGE_SECONDS + rest;
    }

    /** Whole minutes, rounded up, so that the numbers on paper add up. */
    public static int minutes(Dose dose, Breathing breathing, Dose.Chosen chosen) {
        return (int) StrictMath.ceil(seconds(dose, breathing, chosen) / 60 - 1e-9);
    }
}
