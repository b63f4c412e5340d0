package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.junit.jupiter.api.Test;

/** What a program says about how good it is. */
class ProofTest {
    private static final Cost VALUE = new Cost(29, 4, 0, 2, 0, 3);

    @Test
    void aProvedProgramSaysWhatStaysOpenAndWhatWasRuledOut() {
        Proof proof = new Proof(VALUE, VALUE, 120, 500, 400, false, true);

        assertThat(proof.words())
                .isEqualTo("Proved best: 29 points of weighted coverage missing, 4 minutes unused, and no other choice"
                        + " leaves less (120 places for drills offered, 500 partial choices looked at, 400 ruled out by"
                        + " their bound).");
    }

    @Test
    void aSearchThatEndedEarlySaysHowFarItMayBeFromTheBest() {
        Proof proof = new Proof(VALUE, new Cost(26, 6, 0, 1, 0, 4), 120, 500, 400, false, false);

        assertThat(proof.best()).isFalse();
        assertThat(proof.words())
                .startsWith("Best found, not proved: ")
                .contains("The best possible is at most 3 points of weighted coverage better (");
    }

    @Test
    void aSearchThatWasStoppedSaysSo() {
        Proof proof = new Proof(VALUE, new Cost(29, 3, 1, 0, 0, 0), 120, 500, 400, true, false);

        assertThat(proof.words())
                .startsWith("Stopped; the best found so far, not proved: ")
                .contains("The best possible is at most 1 minute used better (");
    }

    @Test
    void equalProgramsThatWereNotAllComparedAreAdmitted() {
        assertThat(new Proof(VALUE, VALUE, 120, 500, 400, false, false).words())
                .startsWith("Proved best")
                .endsWith("Other programs are as good; not all of them were compared by name.");
    }

    @Test
    void aQuestionThatWasNotDecidedIsNotAnsweredWithNo() {
        Phase settle = Phase.SETTLE;
        Cost three = new Cost(3, 0, 0, 0, 0, 0);

        assertThat(new WhyNot.InPhase(settle, Optional.empty(), true).words())
                .isEqualTo("Settle: no program holds it there with all you asked for");
        assertThat(new WhyNot.InPhase(settle, Optional.empty(), false).words())
                .isEqualTo("Settle: the search ended before it was known whether a program can hold it there");
        assertThat(new WhyNot.InPhase(settle, Optional.of(three), false).words())
                .isEqualTo("Settle: at most 3 points of weighted coverage less; the search ended before the proof");
    }
}
