package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Wording;
import org.junit.jupiter.api.Test;

class HandoutMakerTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();
    private static final ClientHandout HANDOUT =
            make(SamplePrograms.order("en", Paper.A4, false, List.of("wall-lean-breath", "arm-up-foot-back@left")));

    @Test
    void distancesAreTheClientsOwnCentimetres() {
        DrillBlock lean = HANDOUT.drills().get(0);

        // The pose puts the heels 0.16 of the stature from the wall, the heel's back a little nearer; 168 cm tall.
        List<String> own = lean.groups().get(0).steps().stream()
                .flatMap(s -> s.text().runs().stream())
                .filter(r -> r.kind() == Wording.Kind.OWN)
                .map(Wording.Run::text)
                .toList();
        assertThat(own).singleElement().asString().matches("2[0-9]\u00a0cm");
    }

    @Test
    void numbersOfTheStepsRunOnThroughThePictures() {
        assertThat(HANDOUT.drills()).allSatisfy(drill -> {
            List<Integer> numbers = drill.groups().stream()
                    .flatMap(g -> g.steps().stream())
                    .map(DrillBlock.Step::number)
                    .toList();
            assertThat(numbers).isSorted().startsWith(1).doesNotHaveDuplicates().endsWith(numbers.size());
        });
    }

    @Test
    void noPlaceholderIsLeftInAnyText() {
        assertThat(HANDOUT.drills().stream().flatMap(d -> d.groups().stream()).flatMap(g -> g.steps().stream()))
                .noneMatch(s -> s.text().text().contains("{"));
    }

    @Test
    void sentenceForEveryDrillIsPrintedOnceForAllDrills() {
        assertThat(HANDOUT.cautions()).singleElement().satisfies(c -> assertThat(c.drills())
                .isEmpty());
    }

    @Test
    void pictureTellsInWordsWhatItsKeysShow() {
        DrillBlock.Group move = HANDOUT.drills().get(0).groups().get(1);

        assertThat(move.figure().alternative())
                .startsWith("Picture B, Move: a person leaning")
                .contains("Reach both hands forward and down");
    }

    @Test
    void realDrillsPrintValidAndInOrder() {
        Problems problems = new Problems();
        byte[] pdf = PRINTER.print(HANDOUT, problems).orElseThrow(() -> new AssertionError(problems.all()));

        assertThat(problems.all()).isEmpty();
        PdfProof.assertValid(pdf);
        assertThat(PdfProof.text(pdf))
                .containsSubsequence("Stand with your back to a wall.", "Let your heels get heavy.", "Facing the wall");
    }

    private static ClientHandout make(HandoutOrder order) {
        Problems problems = new Problems();
        return new HandoutMaker(PRINTER, Map.of())
                .handout(order, problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
    }
}
