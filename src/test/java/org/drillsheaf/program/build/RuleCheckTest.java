package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each hard rule, broken on purpose. */
class RuleCheckTest {
    private final List<BuildTask.Candidate> drills = List.of(
            drill("a", "one", 1, Set.of(), 2),
            drill("b", "two", 1, Set.of(), 2),
            drill("c", "two", 2, Set.of("a"), 2),
            drill("d", "three", 3, Set.of(), 2),
            drill("e", "three", 1, Set.of(), 9));

    private static BuildTask.Candidate drill(
            String id, String family, int level, Set<String> prerequisites, int minutes) {
        BuildTask.Option option = new BuildTask.Option(minutes, minutes + 1, id.equals("a") || id.equals("b"));
        return new BuildTask.Candidate(
                id,
                family,
                level,
                "seated",
                Set.of(),
                Map.of("goal", 1),
                prerequisites,
                false,
                Map.of(0, option, 1, option));
    }

    private BuildTask task(int fewest, int minutes, int strong, int carried, List<BuildTask.Want> wants) {
        BuildTask.PhaseTask phase =
                new BuildTask.PhaseTask("phase", List.of(), fewest, 3, Math.min(5, minutes), minutes, strong, Set.of());
        return new BuildTask(List.of(phase, phase), drills, carried, Set.of(), Set.of(), 0, wants);
    }

    @Test
    void aProgramThatHoldsEveryRuleBreaksNone() {
        assertThat(RuleCheck.broken(task(1, 20, 3, 1, List.of()), List.of(List.of("a", "b"), List.of("a", "c"))))
                .isEmpty();
    }

    @Test
    void eachBrokenRuleIsNamed() {
        assertThat(broken(task(2, 20, 3, 0, List.of()), List.of("a"), List.of("a", "b")))
                .containsExactly("phase has 1 drills");
        assertThat(broken(task(1, 20, 3, 0, List.of()), List.of("a"), List.of("b", "c")))
                .containsExactly("phase has two drills of the family two");
        assertThat(broken(task(1, 3, 3, 0, List.of()), List.of("a"), List.of("a", "b")))
                .containsExactly("phase takes 4 minutes at least");
        assertThat(broken(task(1, 20, 1, 0, List.of()), List.of("a"), List.of("a", "b")))
                .containsExactly("phase has 2 drills above its usual effort");
        assertThat(broken(task(1, 20, 3, 1, List.of()), List.of("a"), List.of("b")))
                .containsExactly("phase carries over 0 drills instead of 1");
        assertThat(broken(task(1, 20, 3, 0, List.of()), List.of("c"), List.of("a")))
                .containsExactly("c comes before its prerequisite a");
        assertThat(broken(task(1, 20, 3, 0, List.of()), List.of("a"), List.of("d")))
                .containsExactly("d comes before the rung below it");
        assertThat(broken(task(1, 20, 3, 0, List.of()), List.of("a"), List.of("c")))
                .isEmpty();
        assertThat(broken(task(1, 40, 3, 0, List.of()), List.of("e"), List.of("d")))
                .isEmpty();
        assertThat(broken(
                        task(1, 20, 3, 0, List.of(new BuildTask.Want("b", Optional.of(1)))),
                        List.of("b"),
                        List.of("a")))
                .containsExactly("b is wanted and missing");
        assertThat(broken(task(1, 20, 3, 0, List.of()), List.of("x"), List.of("a")))
                .containsExactly("x is not offered in phase 0");
    }

    @Test
    void aStepDownIsNamed() {
        List<BuildTask.Candidate> two = List.of(drill("low", "f", 1, Set.of(), 1), drill("up", "f", 2, Set.of(), 1));
        BuildTask.PhaseTask phase = new BuildTask.PhaseTask("phase", List.of(), 1, 3, 5, 5, 0, Set.of());
        BuildTask task = new BuildTask(List.of(phase, phase), two, 0, Set.of(), Set.of(), 0, List.of());

        assertThat(RuleCheck.broken(task, List.of(List.of("up"), List.of("low"))))
                .containsExactly("low steps down from up");
    }

    private static List<String> broken(BuildTask task, List<String> first, List<String> second) {
        return RuleCheck.broken(task, List.of(first, second));
    }
}
