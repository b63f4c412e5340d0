package org.drillsheaf.desk.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.library.ProjectFiles;
import org.junit.jupiter.api.Test;

class DrillQueryTest {
    private static final Catalogue CATALOGUE = LibraryFiles.read(
                    ProjectFiles.alone(Path.of(""), Path.of("exercise-library")), new Problems())
            .orElseThrow()
            .catalogue();
    private static final List<DrillEntry> ENTRIES = CATALOGUE.drills().stream()
            .map(d -> DrillEntry.of(d, Standing.STARTER, CATALOGUE.words()))
            .toList();

    @Test
    void wordsAreFoundWithoutCaseAccentsOrOrder() {
        assertThat(names("SEAT kneel")).isNotEmpty().isEqualTo(names("kneel seat"));
        assertThat(ids("respiracion pecho")).isEqualTo(ids("Respiración PECHO")).isNotEmpty();
        assertThat(names("nosuchword")).isEmpty();
    }

    @Test
    void aNameThatBeginsWithTheWordComesFirst() {
        List<DrillQuery.Hit> hits = DrillQuery.ALL.withWords("wall").find(ENTRIES);

        assertThat(hits.get(0).entry().names()).startsWith(" wall");
        assertThat(hits.get(0).place()).isEqualTo(DrillEntry.Place.NAME);
        assertThat(hits).extracting(DrillQuery.Hit::rank).isSorted();
        assertThat(hits).extracting(DrillQuery.Hit::place).contains(DrillEntry.Place.EQUIPMENT);
    }

    @Test
    void narrowingLeavesOnlyWhatFits() {
        DrillQuery query = DrillQuery.ALL
                .withPhase(Optional.of(Phase.SETTLE))
                .withPosition(Optional.of("supine"))
                .withCondition(Optional.of("hip-posterior"));

        List<DrillQuery.Hit> hits = query.find(ENTRIES);

        assertThat(hits).isNotEmpty().allSatisfy(hit -> {
            assertThat(hit.entry().drill().phases()).contains(Phase.SETTLE);
            assertThat(hit.entry().drill().positions()).contains("supine");
            assertThat(hit.entry().barred()).doesNotContain("hip-posterior");
        });
        assertThat(hits.size())
                .isLessThan(query.withCondition(Optional.empty()).find(ENTRIES).size());
    }

    @Test
    void theListTellsHowManyAreLeft() {
        CatalogueModel model = new CatalogueModel(Words.in("en"), CATALOGUE.words(), java.util.Map.of(), ENTRIES);
        assertThat(model.summary().get()).isEqualTo(ENTRIES.size() + " drills");

        model.query().set(model.query().get().withWords("wall"));

        assertThat(model.summary().get()).endsWith("of " + ENTRIES.size() + " drills, best first");
        model.query().set(model.query().get().withWords("wall march"));
        assertThat(model.hits().get(0).entry().id()).isEqualTo("wall-march");
    }

    private static List<String> names(String words) {
        return DrillQuery.ALL.withWords(words).find(ENTRIES).stream()
                .map(h -> h.entry().names())
                .sorted()
                .toList();
    }

    private static List<String> ids(String words) {
        return DrillQuery.ALL.withWords(words).find(ENTRIES).stream()
                .map(h -> h.entry().id())
                .toList();
    }
}
