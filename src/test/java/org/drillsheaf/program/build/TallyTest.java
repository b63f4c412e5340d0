package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TallyTest {
    @Test
    void whatAPartOfTheWorkLooksAtIsCountedInTheWhole() {
        Tally whole = new Tally(100, () -> false);
        Tally part = whole.part(10);
        whole.look();
        part.look();
        part.look();
        part.ruleOut();
        part.weighed(11);

        assertThat(whole.looked()).isEqualTo(3);
        assertThat(whole.ruledOut()).isEqualTo(1);
        assertThat(part.spent()).as("the part, after more steps than its own").isTrue();
        assertThat(whole.spent()).as("the whole, with steps left").isFalse();
        whole.weighed(90);
        assertThat(whole.spent())
                .as("the whole, after its own steps and the part's")
                .isTrue();
    }
}
