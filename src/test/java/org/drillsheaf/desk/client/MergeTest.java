package org.drillsheaf.desk.client;

import static org.assertj.core.api.Assertions.assertThat;

import org.drillsheaf.store.record.Content;
import org.junit.jupiter.api.Test;

class MergeTest {
    private static final Content BASE =
            Content.emptyMap().with("/a", 1).with("/b", 2).with("/c", 3);

    @Test
    void bothChangesStand() {
        Content merged = Merge.of(BASE, BASE.with("/a", 10), BASE.with("/b", 20));
        assertThat(merged)
                .isEqualTo(Content.emptyMap().with("/a", 10).with("/b", 20).with("/c", 3));
    }

    @Test
    void aFieldTakenAwayHereStaysAway() {
        assertThat(Merge.of(BASE, BASE.without("/c"), BASE.with("/b", 20)).value("/c"))
                .isEmpty();
    }

    @Test
    void withoutAChangeHereTheirsStands() {
        Content theirs = BASE.with("/b", 20);
        assertThat(Merge.of(BASE, BASE, theirs)).isSameAs(theirs);
    }
}
