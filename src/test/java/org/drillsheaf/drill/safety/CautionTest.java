package org.drillsheaf.drill.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.LibraryFiles;
import org.junit.jupiter.api.Test;

class CautionTest {
    private static final List<Caution> CAUTIONS =
            LibraryFiles.read(Path.of("."), new Problems()).orElseThrow().cautions();

    @Test
    void everyGroupHasItsSentencesInEnglishAndSpanish() {
        assertThat(Arrays.stream(Caution.Group.values())).allSatisfy(group -> assertThat(CAUTIONS)
                .as(group.id())
                .anyMatch(c ->
                        c.group() == group && c.text().has("en") && c.text().has("es")));
    }

    @Test
    void theBandIsExplainedOnlyWhereThereIsOne() {
        assertThat(ids(Set.of("band"), Set.of())).contains("band-check", "band-anchor", "feet-and-floor");
        assertThat(ids(Set.of("chair"), Set.of()))
                .doesNotContain("band-check", "no-chair-back")
                .contains("chair");
        assertThat(ids(Set.of("chair"), Set.of("falls"))).contains("no-chair-back");
    }

    @Test
    void noSentencePromisesSafetyOrCure() {
        assertThat(CAUTIONS).allSatisfy(c -> assertThat(c.text().english().toLowerCase(Locale.ROOT))
                .as(c.id())
                .doesNotContainPattern("\\b(safe|cures?|fixes|treats)\\b"));
    }

    private static List<String> ids(Set<String> equipment, Set<String> conditions) {
        return CAUTIONS.stream()
                .filter(c -> c.concerns(equipment, conditions))
                .map(Caution::id)
                .toList();
    }
}
