package org.drillsheaf.screen.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.screen.rule.Truth.FALSE;
import static org.drillsheaf.screen.rule.Truth.TRUE;
import static org.drillsheaf.screen.rule.Truth.UNKNOWN;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables: Kleene SC, Introduction to Metamathematics, 1952, §64; Fitting M, Fundamenta Informaticae 1994;20:113–131. */
class TruthTest {

    @ParameterizedTest
    @CsvSource({
        "F,F, F,F,F", "F,U, F,U,U", "F,T, F,T,T",
        "U,F, F,U,U", "U,U, U,U,U", "U,T, U,T,U",
        "T,F, F,T,T", "T,U, U,T,U", "T,T, T,T,F"
    })
    void andOrAndExclusiveOr(String a, String b, String and, String or, String exclusive) {
        assertThat(of(a).and(of(b))).isEqualTo(of(and));
        assertThat(of(a).or(of(b))).isEqualTo(of(or));
        assertThat(of(a).exclusiveOr(of(b))).isEqualTo(of(exclusive));
    }

    @Test
    void notTurnsTheOrderRound() {
        assertThat(TRUE.not()).isEqualTo(FALSE);
        assertThat(UNKNOWN.not()).isEqualTo(UNKNOWN);
        assertThat(FALSE.not()).isEqualTo(TRUE);
    }

    /** Kleene, not Łukasiewicz: unknown implies unknown is unknown (from memory). */
    @Test
    void unknownImpliesUnknownIsUnknown() {
        assertThat(UNKNOWN.implies(UNKNOWN)).isEqualTo(UNKNOWN);
        assertThat(FALSE.implies(UNKNOWN)).isEqualTo(TRUE);
        assertThat(TRUE.implies(FALSE)).isEqualTo(FALSE);
    }

    @Test
    void atLeastCountsWhatIsSureAndWhatCouldStillBe() {
        assertThat(Truth.atLeast(2, List.of(TRUE, FALSE, TRUE))).isEqualTo(TRUE);
        assertThat(Truth.atLeast(2, List.of(TRUE, FALSE, UNKNOWN))).isEqualTo(UNKNOWN);
        assertThat(Truth.atLeast(2, List.of(TRUE, FALSE, FALSE))).isEqualTo(FALSE);
        assertThat(Truth.atLeast(0, List.of())).isEqualTo(TRUE);
    }

    private static Truth of(String letter) {
        return switch (letter) {
            case "T" -> TRUE;
            case "F" -> FALSE;
            default -> UNKNOWN;
        };
    }
}
