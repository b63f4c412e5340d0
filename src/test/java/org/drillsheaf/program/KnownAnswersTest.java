package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Level;
import org.drillsheaf.program.build.Objective;
import org.junit.jupiter.api.Test;

class KnownAnswersTest {
    private final ExactBuilder builder = new ExactBuilder(new Objective(List.of(Level.values())), 100_000);
    private final KnownAnswers known = new KnownAnswers(2);
    private int searches;

    private Answer ask(int minutes, ExactBuilder with) {
        BuildTask task = task(minutes);
        return known.to(task, () -> {
            searches++;
            return with.solve(task);
        });
    }

    @Test
    void theSameTaskIsSearchedOnce() {
        Answer first = ask(10, builder);
        Answer again = ask(10, builder);

        assertThat(again).isEqualTo(first);
        assertThat(first.drills()).containsExactly(List.of("drill"));
        assertThat(searches).isEqualTo(1);
    }

    @Test
    void anotherTaskIsSearchedAnew() {
        Answer ten = ask(10, builder);
        Answer twelve = ask(12, builder);

        assertThat(twelve.value()).isGreaterThan(ten.value());
        assertThat(searches).isEqualTo(2);
    }

    @Test
    void theTaskAskedLongestAgoIsForgottenFirst() {
        ask(10, builder);
        ask(12, builder);
        ask(10, builder);
        ask(14, builder);
        assertThat(searches).isEqualTo(3);

        ask(10, builder);
        assertThat(searches).isEqualTo(3);
        ask(12, builder);
        assertThat(searches).isEqualTo(4);
    }

    @Test
    void anAnswerThatWasStoppedIsNotRemembered() {
        Answer stopped = ask(10, builder.stoppedBy(() -> true));
        Answer whole = ask(10, builder);

        assertThat(stopped.stopped()).isTrue();
        assertThat(whole.kind()).isEqualTo(Answer.Kind.BEST);
    }

    /** One drill of five minutes for a session of so many. */
    private static BuildTask task(int minutes) {
        BuildTask.PhaseTask phase = new BuildTask.PhaseTask("Settle", List.of(), 1, 2, minutes, minutes, 0, Set.of());
        BuildTask.Candidate drill = new BuildTask.Candidate(
                "drill",
                "family",
                1,
                "seated",
                Set.of(),
                Map.of(),
                Set.of(),
                false,
                Map.of(0, new BuildTask.Option(5, 5, false)));
        return new BuildTask(List.of(phase), List.of(drill), 0, Set.of(), Set.of(), 0, List.of());
    }
}
