package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.saying.Saying;
import org.junit.jupiter.api.Test;

/** Programs that were written in plain words keep the strength of each reason, and never get one that they did not have. */
class GoalReasonTest {
    private static final List<Served> SERVES =
            List.of(new Served("full-exhale", 3, 2), new Served("neck-ease", 2, 0), new Served("rib-motion", 1, 1));

    @Test
    void goalAndStrengthAreReadFromTheWordsOfAnOlderProgram() {
        List<Saying> told = told(
                "the coach pinned it: she likes it",
                "Full breath out, strength 3 of 3: Breath out 4 s is limited",
                "Moving ribs, strength 1 of 3: Settle asks for it with weight 2",
                "known from before; 3 known drills are carried over");

        assertThat(told.stream().flatMap(reason -> GoalReason.of(reason).stream()))
                .containsExactly(
                        new GoalReason("full-exhale", 3, Saying.written("Breath out 4 s is limited")),
                        new GoalReason("rib-motion", 1, Saying.written("Settle asks for it with weight 2")));
        assertThat(told).first().isEqualTo(Saying.written("the coach pinned it: she likes it"));
        assertThat(told).last().isEqualTo(Saying.written("known from before; 3 known drills are carried over"));
    }

    @Test
    void wordsThatDoNotAgreeWithTheCountsStayWords() {
        assertThat(named("Full breath out, strength 2 of 3: so", "Moving ribs, strength 1 of 3: so"))
                .as("another strength")
                .isEmpty();
        assertThat(named("Full breath out, strength 3 of 3: so"))
                .as("one too few")
                .isEmpty();
        assertThat(named(
                        "Full breath out, strength 3 of 3: so",
                        "Moving ribs, strength 1 of 3: so",
                        "Neck, strength 2 of 3: so"))
                .as("one too many")
                .isEmpty();
    }

    @Test
    void reasonsOfTodayAreLeftAsTheyAre() {
        List<Saying> reasons = List.of(new GoalReason("full-exhale", 3, Saying.phrase("why.fills")).saying());

        assertThat(GoalReason.told(reasons, SERVES)).isEqualTo(reasons);
    }

    private static List<Saying> told(String... words) {
        return GoalReason.told(Stream.of(words).map(Saying::written).toList(), SERVES);
    }

    private static List<GoalReason> named(String... words) {
        return told(words).stream()
                .flatMap(reason -> GoalReason.of(reason).stream())
                .toList();
    }
}
