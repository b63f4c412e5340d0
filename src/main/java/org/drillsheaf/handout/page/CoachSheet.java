package org.drillsheaf.handout.page;

import java.util.List;
import java.util.Optional;

/**
 * For the coach and the file: what was measured, what it was read as, and why these drills. Words of the trade come from the
 * reading and the program and stand in the house's language.
 *
 * @param statureCm whole centimetres
 * @param headline what is held, in one line
 * @param settleMost the one test that would settle most
 * @param proof how good the program is
 * @param cautions what was acted on
 * @param changed what the coach changed, each with its reason
 * @param assumed settings that took their cautious default, and those that were loosened
 * @param grade reading grade of the client's pages, after Flesch and Kincaid
 * @param report the items of the exercise reporting template
 */
public record CoachSheet(
        Frame frame,
        int age,
        int statureCm,
        List<Row> screen,
        String headline,
        List<Guess> guesses,
        Optional<String> settleMost,
        List<Why> drills,
        String proof,
        List<String> cautions,
        List<String> changed,
        List<String> assumed,
        double grade,
        List<Item> report)
        implements Document {

    /**
     * One value of the screen.
     *
     * @param first whether it is the first row of its test
     * @param side {@code left}, {@code right} or empty
     * @param errors distance from the cut-off in errors, more is fuller; empty for words only
     * @param kind {@code limited}, {@code at-the-line}, {@code full}, {@code beyond-expected}, {@code painful},
     *     {@code not-tested} or {@code no-reference}
     */
    public record Row(
            String test,
            boolean first,
            Optional<String> side,
            Optional<Double> errors,
            String value,
            String kind,
            String finding,
            String cutoff) {}

    /** One presentation that is held or open, with its evidence. */
    public record Guess(
            String name, String verdict, List<String> speaksFor, List<String> against, List<String> unknown) {
        public Guess {
            speaksFor = List.copyOf(speaksFor);
            against = List.copyOf(against);
            unknown = List.copyOf(unknown);
        }
    }

    /** Why a drill is there. */
    public record Why(int number, String name, String serves, int strength, String because, String nextBest) {}

    /**
     * One item of the reporting template.
     *
     * @param id number of the item; its phrase is {@code report.<id>}
     * @param value what holds for this program; empty for a line to write on
     */
    public record Item(String id, String value) {}

    public CoachSheet {
        screen = List.copyOf(screen);
        guesses = List.copyOf(guesses);
        drills = List.copyOf(drills);
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
