package org.drillsheaf.handout.page;

import java.util.List;
import java.util.Optional;

/**
 * For the coach and the file: what was measured, what it was read as, and why these drills.
 *
 * @param statureCm whole centimetres
 * @param screen tests of which something was measured
 * @param notTested the others
 * @param headline what is held, in one line
 * @param settleMost the one test that would settle most
 * @param proof how good the program is
 * @param aims what the phase asks for
 * @param cautions what was acted on
 * @param changed what the coach changed, each with its reason
 * @param assumed settings that took their cautious default, and those that were loosened
 * @param grade reading grade of the client's pages, after Flesch and Kincaid; empty unless they are in English
 * @param report the items of the exercise reporting template
 */
public record CoachSheet(
        Frame frame,
        int age,
        int statureCm,
        List<Row> screen,
        List<NotTested> notTested,
        Told headline,
        List<Guess> guesses,
        Optional<Told> settleMost,
        List<Why> drills,
        Told proof,
        List<Aim> aims,
        List<Told> cautions,
        List<Told> changed,
        List<Told> assumed,
        Optional<Double> grade,
        List<Item> report)
        implements Document {

    /**
     * One value of the screen.
     *
     * @param rows how many values the test has, at its first one; 0 at the others
     * @param side {@code left}, {@code right} or empty
     * @param errors distance from the cut-off in errors, more is fuller; empty for words only
     * @param kind {@code limited}, {@code at-the-line}, {@code full}, {@code beyond-expected}, {@code painful},
     *     {@code not-tested} or {@code no-reference}
     * @param cutoff with its error; empty where there is none
     * @param reason the rule in words, where no cut-off can be shown
     */
    public record Row(
            Told test,
            int rows,
            Optional<String> side,
            Optional<Double> errors,
            String value,
            String kind,
            Told finding,
            String cutoff,
            String reason) {}

    /**
     * A test of which nothing was measured.
     *
     * @param cutoff with its error; empty where there is none
     */
    public record NotTested(Told test, String cutoff) {}

    /** One presentation that is held or open, with its evidence. */
    public record Guess(Told name, Told verdict, List<Told> speaksFor, List<Told> against, List<Told> unknown) {
        public Guess {
            speaksFor = List.copyOf(speaksFor);
            against = List.copyOf(against);
            unknown = List.copyOf(unknown);
        }
    }

    /**
     * Why a drill is there.
     *
     * @param reasons at least one
     * @param nextBest the drill that would take its place
     * @param less weighted coverage that the next best would cost
     */
    public record Why(int number, Told name, List<Reason> reasons, Optional<Told> nextBest, int less) {
        public Why {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * One reason for a drill.
     *
     * @param serves the goal, where it is one
     * @param strength 1 to 3; 0 without a goal
     */
    public record Reason(Optional<Told> serves, int strength, Told because) {}

    /** What the phase asks for, and how far the drills go. */
    public record Aim(Told goal, int weight, int target, int covered) {}

    /**
     * One item of the reporting template.
     *
     * @param id number of the item; its phrase is {@code report.<id>}
     * @param value what holds for this program; empty for a line to write on
     */
    public record Item(String id, Optional<Told> value) {}

    public CoachSheet {
        screen = List.copyOf(screen);
        notTested = List.copyOf(notTested);
        guesses = List.copyOf(guesses);
        drills = List.copyOf(drills);
        aims = List.copyOf(aims);
        cautions = List.copyOf(cautions);
        changed = List.copyOf(changed);
        assumed = List.copyOf(assumed);
        report = List.copyOf(report);
    }

    @Override
    public DocumentKind kind() {
        return DocumentKind.COACH_SHEET;
    }
}
