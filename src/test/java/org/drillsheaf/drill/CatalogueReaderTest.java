package org.drillsheaf.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.junit.jupiter.api.Test;

class CatalogueReaderTest {
    private final Problems problems = new Problems();

    @Test
    void aCompleteDrillIsReadWithAllItsParts() {
        Drill drill = read(SampleDrill.TEXT).drill("wall-lean-breath").orElseThrow();

        assertThat(problems.all()).isEmpty();
        assertThat(drill.phases()).containsExactly(Phase.SETTLE, Phase.RESTORE);
        assertThat(drill.strength("inhibit-back-tone")).isEqualTo(3);
        assertThat(drill.breathing().out()).isEqualTo(new Breathing.Seconds(6, 8));
        assertThat(drill.dose().sets()).isEqualTo(new DoseRange(2, 1, 3));
        assertThat(drill.dose().noun().get("en")).containsEntry("other", "breaths");
        assertThat(drill.actionSteps().get(0).mark()).contains("reach");
        assertThat(drill.conditions().get(0).action()).isEqualTo(Action.MODIFY);
        assertThat(drill.tags().truth("can-hold")).contains(true);
        assertThat(drill.variant("hand-on-worktop")).isPresent();
    }

    @Test
    void aVariantIsLaidOverTheDrillAndTheRestStays() {
        Drill drill = read(SampleDrill.TEXT).drill("wall-lean-breath").orElseThrow();

        Drill changed = new DrillReader(SampleDrill.schema())
                .withVariants(drill, drill.variants(), problems)
                .orElseThrow();

        assertThat(problems.all()).isEmpty();
        assertThat(changed.equipment()).containsExactly("wall", "counter");
        assertThat(changed.pose().nearest("/start/joints/knee/flex").number()).contains(10.0);
        assertThat(changed.pose().nearest("/start/joints/hip/flex").number()).contains(20.0);
        assertThat(changed.actionSteps()).hasSize(1);
    }

    @Test
    void twoVariantsThatContradictEachOtherCannotBeAppliedTogether() {
        Drill drill = read(SampleDrill.TEXT.replace(
                        "variants:\n",
                        """
                        variants:
                          - {id: knees-softer, name: {en: Softer knees}, change: {en: Bend your knees.}, pose: {start: {joints: {knee: {flex: 40}}}}}
                        """))
                .drill("wall-lean-breath")
                .orElseThrow();

        assertThat(new DrillReader(SampleDrill.schema()).withVariants(drill, drill.variants(), problems))
                .isEmpty();
        assertThat(problems.all()).extracting(Problem::what).anyMatch(w -> w.contains("changed in two ways at once"));
    }

    @Test
    void namesThatDoNotExistAreToldWithTheirLineAndTheNearestName() {
        read(SampleDrill.TEXT
                .replace("inhibit-back-tone: 3", "inhibit-back-tones: 3")
                .replace("positions: [leaning]", "positions: [hanging]")
                .replace("mark: reach}", "mark: reech}")
                .replace("variant: hand-on-worktop", "variant: hand-on-shelf")
                .replace("prerequisites: []", "prerequisites: [nowhere]"));

        assertThat(problems.all())
                .extracting(Problem::what)
                .containsExactlyInAnyOrder(
                        "There is no goal “inhibit-back-tones”",
                        "There is no position “hanging”",
                        "The picture “move” has no mark “reech”",
                        "This drill has no variant “hand-on-shelf”",
                        "There is no drill “nowhere”");
        assertThat(problems.all()).allMatch(p -> p.line() > 0 && p.file().equals("wall-lean-breath.yaml"));
        assertThat(problems.all().get(0).remedy()).isEqualTo("Write “inhibit-back-tone” if that was meant");
    }

    @Test
    void aDoseOutsideItsRangeAndALongPauseAreRefused() {
        read(SampleDrill.TEXT
                .replace("sets: {default: 2, range: [1, 3]}", "sets: {default: 4, range: [1, 3]}")
                .replace("pause-seconds: 2", "pause-seconds: 4")
                .replace("2026-10-12", "2026-02-31"));

        assertThat(problems.all())
                .extracting(Problem::what)
                .containsExactlyInAnyOrder(
                        "The default of sets is 4, outside its range 1 to 3",
                        "The pause after the breath out is longer than two seconds",
                        "“2026-02-31” is no day of the calendar");
    }

    @Test
    void theFileIsCalledLikeTheDrillAndNoIdStandsTwice() {
        reader().read(Map.of("a.yaml", SampleDrill.TEXT), problems);

        assertThat(problems.all())
                .extracting(Problem::what)
                .containsExactly("The drill is called “wall-lean-breath” and its file “a”");
    }

    @Test
    void oneBrokenDrillDoesNotHideTheOthers() {
        Catalogue catalogue =
                reader().read(Map.of("wall-lean-breath.yaml", SampleDrill.TEXT, "b.yaml", "id: b\n"), problems);

        assertThat(catalogue.drills()).extracting(Drill::id).containsExactly("wall-lean-breath");
        assertThat(problems.all())
                .anyMatch(p -> p.file().equals("b.yaml") && p.what().contains("“name” is missing"));
    }

    @Test
    void theVocabulariesOfTheProjectAreRead() {
        DrillWords words = SampleDrill.words();

        assertThat(words.goals())
                .containsKeys(
                        "inhibit-back-tone",
                        "restore-hip-extension",
                        "internal-rotation-reference",
                        "foot-pressure-cueing")
                .hasSize(12);
        assertThat(words.positions()).hasSize(11);
        EquipmentItem pad = java.util.Objects.requireNonNull(words.equipment().get("pad"));
        assertThat(pad.isAtHand(java.util.Set.of("blanket"))).isTrue();
        assertThat(pad.standInAmong(java.util.Set.of("blanket"))
                        .orElseThrow()
                        .name()
                        .english())
                .isEqualTo("a folded blanket");
        assertThat(pad.isAtHand(java.util.Set.of("chair"))).isFalse();
    }

    private Catalogue read(String text) {
        return reader().read(Map.of("wall-lean-breath.yaml", text), problems);
    }

    private static CatalogueReader reader() {
        return new CatalogueReader(SampleDrill.words(), SampleDrill.schema());
    }

    @Test
    void textsOfOneLanguageOnlyAreNotSaidToSpeakAnother() {
        Drill drill = read(SampleDrill.TEXT).drill("wall-lean-breath").orElseThrow();

        assertThat(drill.speaks("en")).isTrue();
        assertThat(drill.speaks("es")).isFalse();
    }
}
