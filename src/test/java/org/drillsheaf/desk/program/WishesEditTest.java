package org.drillsheaf.desk.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.CoachWishes;
import org.drillsheaf.program.CoachWishesReader;
import org.drillsheaf.program.Pin;
import org.drillsheaf.store.record.Content;
import org.junit.jupiter.api.Test;

/** What the coach does at the window, read back as wishes. */
class WishesEditTest {
    private static final Content EMPTY = Content.emptyMap().with("/date", "2026-06-04");

    private static CoachWishes read(Content visit) {
        Problems problems = new Problems();
        CoachWishes wishes = YamlNode.parse("visit", visit.yaml(), problems)
                .flatMap(v -> v.get("coach"))
                .map(c ->
                        new CoachWishesReader(Set.of("full-exhale"), Set.of("sit-hum", "tail-roll"), problems).read(c))
                .orElse(CoachWishes.NONE);
        assertThat(problems.all()).isEmpty();
        return wishes;
    }

    @Test
    void aWeightReplacesTheOneBeforeAndGoesWithoutATrace() {
        Content two = WishesEdit.weight(EMPTY, Phase.SETTLE, "full-exhale", OptionalInt.of(2));
        Content four = WishesEdit.weight(two, Phase.SETTLE, "full-exhale", OptionalInt.of(4));
        assertThat(read(four).weights()).hasSize(1);
        assertThat(read(four).weights().get(0).weight()).isEqualTo(4);
        assertThat(WishesEdit.weight(four, Phase.SETTLE, "full-exhale", OptionalInt.empty()))
                .isEqualTo(EMPTY);
    }

    @Test
    void pinsAreByPhase() {
        Content visit = WishesEdit.pin(EMPTY, Pin.Kind.MUST_HAVE, "sit-hum", Phase.SETTLE);
        visit = WishesEdit.pin(visit, Pin.Kind.MUST_NOT_HAVE, "sit-hum", Phase.RESTORE);
        assertThat(read(visit).pins()).hasSize(2);
        Content without = WishesEdit.unpin(visit, "sit-hum", Optional.of(Phase.SETTLE));
        assertThat(read(without).pins()).singleElement().extracting(Pin::kind).isEqualTo(Pin.Kind.MUST_NOT_HAVE);
    }

    @Test
    void aSwapPinsOneAndLeavesTheOtherOut() {
        List<Pin> pins = read(WishesEdit.swap(EMPTY, Phase.SETTLE, "sit-hum", "tail-roll"))
                .pins();
        assertThat(pins).extracting(Pin::drill).containsExactly("sit-hum", "tail-roll");
        assertThat(pins).extracting(Pin::wanted).containsExactly(false, true);
    }

    @Test
    void aDoseSaysOnlyWhatTheCoachChanged() {
        Content visit = WishesEdit.dose(
                EMPTY, "sit-hum", Phase.SETTLE, OptionalInt.of(3), OptionalInt.empty(), OptionalInt.empty());
        CoachWishes.DoseWish wish = read(visit).doses().get(0);
        assertThat(wish.sets()).hasValue(3);
        assertThat(wish.each()).isEmpty();
        assertThat(WishesEdit.dose(
                        visit, "sit-hum", Phase.SETTLE, OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty()))
                .isEqualTo(EMPTY);
    }

    @Test
    void anOrderIsReadInItsOrder() {
        Content visit = WishesEdit.order(EMPTY, Phase.SETTLE, List.of("tail-roll", "sit-hum"));
        assertThat(read(visit).order().get(0).drills()).containsExactly("tail-roll", "sit-hum");
    }
}
