package org.drillsheaf.desk.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartClash;
import org.drillsheaf.store.record.PartKey;
import org.junit.jupiter.api.Test;

class OpenClashTest {
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));
    private static final Content BASE =
            Content.emptyMap().with("/a", 1).with("/b", 2).with("/c", 3);

    private static PartClash clash(Optional<Content> mine, Optional<Content> theirs) {
        Part kept = new Part(VISIT, 2, theirs, "Joran", Instant.EPOCH);
        return new PartClash(
                UUID.randomUUID(), UUID.randomUUID(), VISIT, Optional.of(BASE), kept, mine, "Tamsin", Instant.EPOCH);
    }

    private static OpenClash live(Content mine, Content theirs) {
        return OpenClash.live(clash(Optional.of(mine), Optional.of(theirs)));
    }

    @Test
    void onlyFieldsThatBothChangedAreAskedAndEachIsDecidedForItself() {
        OpenClash clash = live(
                BASE.with("/a", 10).with("/b", 20).with("/c", 30),
                BASE.with("/a", 11).with("/b", 21).with("/d", 4));
        assertThat(clash.open()).extracting(OpenClash.Field::path).containsExactly("/a", "/b");

        OpenClash half = clash.decide(clash.open().get(0), false);
        assertThat(half.isDecided()).isFalse();
        OpenClash decided = half.decide(half.open().get(0), true);

        assertThat(decided.isDecided()).isTrue();
        assertThat(decided.decided())
                .isEqualTo(Content.emptyMap()
                        .with("/a", 11)
                        .with("/b", 20)
                        .with("/d", 4)
                        .with("/c", 30));
    }

    @Test
    void theSameChangeAtBothDesksIsNoClash() {
        assertThat(live(BASE.with("/a", 10), BASE.with("/a", 10)).isDecided()).isTrue();
    }

    @Test
    void aNumberThatBecameAMapIsOneFieldWithTheNumber() {
        Content painful = BASE.without("/a").with("/a/value", 9).with("/a/pain", true);
        OpenClash clash = live(painful, BASE.with("/a", 7));

        assertThat(clash.open()).extracting(OpenClash.Field::path).containsExactly("/a");
        assertThat(clash.decide(clash.open().get(0), false).decided()).isEqualTo(BASE.with("/a", 7));
        assertThat(clash.decide(clash.open().get(0), true).decided()).isEqualTo(painful);
    }

    @Test
    void pinsThatBothAddedAreDecidedTogetherAndNeverMixed() {
        Content mine = pinned("must-have", "tail-roll");
        Content theirs = pinned("must-not-have", "wall-march");
        OpenClash clash = live(mine, theirs);

        assertThat(clash.open()).extracting(OpenClash.Field::path).containsExactly("/coach/pins");
        assertThat(clash.decide(clash.open().get(0), false).decided()).isEqualTo(theirs);
        assertThat(clash.decide(clash.open().get(0), true).decided()).isEqualTo(mine);
    }

    private static Content pinned(String kind, String drill) {
        Content pin = Content.emptyMap().with("/kind", kind).with("/drill", drill);
        return BASE.with("/coach/pins", Content.emptyList().with("/0", pin));
    }

    @Test
    void whatWasTakenAwayNeverTakesTheOtherDesksValuesWithIt() {
        Content changed = BASE.with("/a", 10);
        assertThat(OpenClash.live(clash(Optional.empty(), Optional.of(changed))).decided())
                .isEqualTo(changed);
        assertThat(OpenClash.live(clash(Optional.of(changed), Optional.empty())).decided())
                .isEqualTo(changed);
    }

    @Test
    void whatIsTypedMeanwhileKeepsTheDecisionsMadeSoFar() {
        Content theirs = BASE.with("/a", 11).with("/b", 21);
        OpenClash clash = live(BASE.with("/a", 10).with("/b", 20), theirs);
        OpenClash half = clash.decide(clash.open().get(0), false);

        OpenClash later = half.carriedTo(live(BASE.with("/a", 10).with("/b", 25), theirs));

        assertThat(later.open()).extracting(OpenClash.Field::path).containsExactly("/b");
        assertThat(later.decide(later.open().get(0), true).decided())
                .isEqualTo(BASE.with("/a", 11).with("/b", 25));
    }
}
