package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;
import org.junit.jupiter.api.Test;

/** What a program says about how good it is. */
class ProofTest {
    private static final Cost VALUE = new Cost(29, 4, 0, 2, 0, 3);

    @Test
    void aProvedProgramSaysWhatStaysOpenAndWhatWasRuledOut() {
        Proof proof = new Proof(VALUE, VALUE, 120, 500, 400, false, true);

        assertThat(said(proof.words()))
                .isEqualTo("Proved best: 29 points of weighted coverage missing, 4 minutes unused, and no other choice"
                        + " leaves less (120 places for drills offered, 500 partial choices looked at, 400 ruled out by"
                        + " their bound).");
    }

    @Test
    void aSearchThatEndedEarlySaysHowFarItMayBeFromTheBest() {
        Proof proof = new Proof(VALUE, new Cost(26, 6, 0, 1, 0, 4), 120, 500, 400, false, false);

        assertThat(proof.best()).isFalse();
        assertThat(said(proof.words()))
                .startsWith("Best found, not proved: ")
                .contains("The best possible is at most 3 points of weighted coverage better (");
    }

    @Test
    void aSearchThatWasStoppedSaysSo() {
        Proof proof = new Proof(VALUE, new Cost(29, 3, 1, 0, 0, 0), 120, 500, 400, true, false);

        assertThat(said(proof.words()))
                .startsWith("Stopped; the best found so far, not proved: ")
                .contains("The best possible is at most 1 minute used better (");
    }

    @Test
    void equalProgramsThatWereNotAllComparedAreAdmitted() {
        assertThat(said(new Proof(VALUE, VALUE, 120, 500, 400, false, false).words()))
                .startsWith("Proved best")
                .endsWith("Other programs are as good; not all of them were compared by name.");
    }

    @Test
    void aQuestionThatWasNotDecidedIsNotAnsweredWithNo() {
        Cost three = new Cost(3, 0, 0, 0, 0, 0);

        assertThat(inSettle(Optional.empty(), true))
                .isEqualTo("Settle: no program holds it there with all you asked for");
        assertThat(inSettle(Optional.empty(), false))
                .isEqualTo("Settle: the search ended before it was known whether a program can hold it there");
        assertThat(inSettle(Optional.of(three), false))
                .isEqualTo("Settle: at most 3 points of weighted coverage less; the search ended before the proof");
        assertThat(without(Optional.empty(), true, true)).isEqualTo("no program fits");
        assertThat(without(Optional.empty(), false, true))
                .isEqualTo("the search ended before it was known whether a program fits without it");
    }

    private static String inSettle(Optional<Cost> cost, boolean decided) {
        return said(new WhyNot.InPhase(Phase.SETTLE, new Difference(cost, decided, true)).words());
    }

    private static String without(Optional<Cost> cost, boolean decided, boolean fromBest) {
        return said(new Without(new Difference(cost, decided, fromBest)).words());
    }

    private static String withABand(Cost cost, boolean decided, boolean fromBest) {
        return said(new WhatIf(Saying.written("a band"), new Difference(Optional.of(cost), decided, fromBest)).words());
    }

    /** Only the first level: what the later ones come to is not known before the end of the search. */
    @Test
    void aGainOfASearchThatEndedEarlyIsTheLeastAndALossTheMostThereCanBe() {
        Cost gain = new Cost(-3, 2, 0, 0, 0, 1);
        Cost loss = new Cost(0, 2, 0, -1, 0, 0);

        assertThat(withABand(gain, true, true))
                .isEqualTo("With a band: 3 points of weighted coverage more, 2 minutes used less, 1 piece of equipment"
                        + " more.");
        assertThat(withABand(gain, false, true))
                .isEqualTo(
                        "With a band: at least 3 points of weighted coverage more; the search ended before the proof.");
        assertThat(withABand(Cost.NONE, true, true)).isEqualTo("With a band: nothing gained.");
        assertThat(withABand(Cost.NONE, false, true))
                .isEqualTo("With a band: no gain was found; the search ended before the proof.");
        assertThat(without(Optional.of(loss), false, true))
                .isEqualTo("at most 2 minutes used less; the search ended before the proof");
        assertThat(without(Optional.of(Cost.NONE), false, true))
                .isEqualTo("costs nothing; the search ended before the proof");
    }

    @Test
    void aGainOverAProgramThatIsNotProvedBestSaysSo() {
        assertThat(withABand(new Cost(-3, 0, 0, 0, 0, 0), true, false))
                .isEqualTo("With a band: 3 points of weighted coverage more; compared with a program that is not proved"
                        + " best itself.");
    }
}
