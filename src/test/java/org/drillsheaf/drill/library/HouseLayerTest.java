package org.drillsheaf.drill.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillStatus;
import org.drillsheaf.drill.SampleDrill;
import org.drillsheaf.drill.library.HouseLayer.Laid;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.junit.jupiter.api.Test;

/** How a clinic's own drills lie over the starter catalogue. */
class HouseLayerTest {
    private static final String ID = "wall-lean-breath";
    private static final String FILE = "house/exercise-library/wall-lean-breath.yaml";
    private static final String WITHDRAWAL =
            """
            id: wall-lean-breath
            withdrawn: true
            based-on: 1
            revision: 2
            author: Tamsin Rook
            reviewed-on: 2026-11-20
            reason: Our walls have rails.
            """;

    private final Problems problems = new Problems();

    @Test
    void withoutAHouseTheStarterCatalogueCounts() {
        Laid laid = only(lay(Map.of()));

        assertThat(laid.standing()).isEqualTo(Standing.STARTER);
        assertThat(laid.node()).isSameAs(laid.starter().orElseThrow());
    }

    @Test
    void aHouseFileReplacesTheWholeDrillAndCountsItsOwnVersions() {
        String house = SampleDrill.TEXT
                .replace("revision: 1", "revision: 2\nbased-on: 1")
                .replace("en: Wall lean with long breath", "en: Wall lean our way")
                .replace("stop: []\n", "");

        Laid laid = only(lay(Map.of(FILE, house)));
        Drill drill = read(laid.node());

        assertThat(problems.all()).isEmpty();
        assertThat(laid.standing()).isEqualTo(Standing.REPLACED);
        assertThat(drill.name().english()).isEqualTo("Wall lean our way");
        assertThat(drill.edition().revision()).isEqualTo(2);
        assertThat(drill.edition().basedOn()).contains(1);
        assertThat(laid.node().has("stop"))
                .as("nothing of the starter shines through")
                .isFalse();
    }

    @Test
    void aDrillOfAnotherIdIsAdded() {
        String own = SampleDrill.TEXT.replace("id: wall-lean-breath", "id: our-own-lean");

        Map<String, Laid> laid = lay(Map.of("house/exercise-library/our-own-lean.yaml", own));

        assertThat(laid).containsOnlyKeys("our-own-lean", ID);
        assertThat(laid.get("our-own-lean").standing()).isEqualTo(Standing.ADDED);
        assertThat(problems.all()).isEmpty();
    }

    @Test
    void aWithdrawnDrillIsNotOfferedButOldProgramsStillFindIt() {
        Laid laid = only(lay(Map.of(FILE, WITHDRAWAL)));
        var catalogue = reader().catalogue(java.util.List.of(laid.node()), problems);

        assertThat(problems.all()).isEmpty();
        assertThat(laid.standing()).isEqualTo(Standing.WITHDRAWN);
        assertThat(catalogue.inUse()).isEmpty();
        Drill drill = catalogue.drill(ID).orElseThrow();
        assertThat(drill.status()).isEqualTo(DrillStatus.WITHDRAWN);
        assertThat(drill.edition().author()).isEqualTo("Tamsin Rook");
        assertThat(drill.edition().reason()).isEqualTo("Our walls have rails.");
        assertThat(drill.actionSteps()).as("printable").isNotEmpty();
    }

    @Test
    void aNewerStarterRevisionIsToldAndNothingIsMerged() {
        String house = SampleDrill.TEXT.replace("revision: 1", "revision: 2\nbased-on: 1");
        String newer = SampleDrill.TEXT
                .replace("revision: 1", "revision: 3")
                .replace("en: Wall lean with long breath", "en: Wall lean with a longer breath");

        Laid laid = only(lay(newer, Map.of(FILE, house)));

        assertThat(laid.node().nearest("/name/en").text()).contains("Wall lean with long breath");
        assertThat(problems.all())
                .singleElement()
                .satisfies(p -> assertThat(p.severity()).isEqualTo(Problem.Severity.WARNING))
                .extracting(Problem::message)
                .isEqualTo(
                        FILE + ":11: The starter drill has moved on to revision 3; this is based on revision 1. Compare"
                                + " it with exercise-library/wall-lean-breath.yaml, take over what you want and write “based-on:"
                                + " 3”.");
    }

    @Test
    void aWithdrawalOfAnOlderRevisionIsToldToo() {
        lay(SampleDrill.TEXT.replace("revision: 1", "revision: 2"), Map.of(FILE, WITHDRAWAL));

        assertThat(problems.all()).extracting(Problem::line).containsExactly(3);
    }

    @Test
    void aReplacementThatDoesNotSayWhatItIsBasedOnIsAnErrorAtItsOwnLine() {
        lay(Map.of(FILE, SampleDrill.TEXT));

        assertThat(problems.all())
                .extracting(Problem::message)
                .containsExactly(FILE + ":1: “wall-lean-breath” is a starter drill, and this file does not say which"
                        + " revision it replaces. Add “based-on: 1”, or give the drill an id of its own.");
    }

    @Test
    void aRevisionThatWasNeverDeliveredIsAnError() {
        lay(Map.of(FILE, SampleDrill.TEXT.replace("revision: 1", "revision: 1\nbased-on: 7")));

        assertThat(problems.hasErrors()).isTrue();
        assertThat(problems.all().get(0).what()).contains("revision 7").contains("at revision 1");
    }

    @Test
    void aWithdrawalSaysWhoAndWhy() {
        lay(Map.of(FILE, WITHDRAWAL.replaceAll("(?m)^reason.*\\R", "")));

        assertThat(problems.all())
                .extracting(Problem::what)
                .containsExactly("“reason” is missing in the top of the file");
    }

    @Test
    void whatIsBasedOnNothingIsToldAsAWarning() {
        lay("", Map.of(FILE, WITHDRAWAL));
        lay("", Map.of(FILE, SampleDrill.TEXT.replace("revision: 1", "revision: 1\nbased-on: 1")));

        assertThat(problems.hasErrors()).isFalse();
        assertThat(problems.all())
                .extracting(Problem::what)
                .containsExactly(
                        "There is no starter drill “wall-lean-breath” to withdraw",
                        "There is no starter drill “wall-lean-breath” that this could be based on");
    }

    private Map<String, Laid> lay(Map<String, String> house) {
        return lay(SampleDrill.TEXT, house);
    }

    private Map<String, Laid> lay(String starter, Map<String, String> house) {
        Map<String, String> delivered =
                starter.isEmpty() ? Map.of() : Map.of("exercise-library/wall-lean-breath.yaml", starter);
        return HouseLayer.lay(
                CatalogueReader.parse(delivered, problems),
                CatalogueReader.parse(house, problems),
                withdrawalSchema(),
                problems);
    }

    private static YamlSchema withdrawalSchema() {
        try {
            return YamlSchema.of(Files.readString(Path.of("shared/schemas/withdrawal.schema.json")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Laid only(Map<String, Laid> laid) {
        assertThat(laid).containsOnlyKeys(ID);
        return Optional.ofNullable(laid.get(ID)).orElseThrow();
    }

    private Drill read(YamlNode node) {
        return reader().catalogue(java.util.List.of(node), problems)
                .drill(ID)
                .orElseThrow(() -> new AssertionError(problems.all()));
    }

    private static CatalogueReader reader() {
        return new CatalogueReader(SampleDrill.words(), SampleDrill.schema());
    }
}
