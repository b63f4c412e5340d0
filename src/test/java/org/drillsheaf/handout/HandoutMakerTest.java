package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
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
    void whenToStopADrillReadsAsOneSentence() {
        ClientHandout hum = make(SamplePrograms.order("en", Paper.A4, false, List.of("sit-hum")));

        assertThat(hum.drills().get(0).stop()).containsExactly("You feel dizzy or your lips tingle.");
        byte[] pdf = PRINTER.print(hum, new Problems()).orElseThrow();
        assertThat(PdfProof.text(pdf)).contains("Stop this drill if you feel dizzy or your lips tingle.");
    }

    @Test
    void pictureTellsInWordsWhatItsKeysShow() {
        DrillBlock.Group move = HANDOUT.drills().get(0).groups().get(1);

        assertThat(move.figure().alternative())
                .startsWith("Picture B, Move: Standing, the back on a wall")
                .contains("Reach both hands forward and down");
    }

    @Test
    void leftDrillIsDrawnAsTheMirroredPictureOfTheRightOne() {
        List<DrillBlock> both = make(SamplePrograms.order(
                        "en", Paper.A4, false, List.of("side-heel-to-wall@right", "side-heel-to-wall@left")))
                .drills();

        for (int group = 0; group < both.get(0).groups().size(); group++) {
            BufferedImage right = painted(both.get(0).groups().get(group).figure());
            BufferedImage left = painted(both.get(1).groups().get(group).figure());
            assertThat(left.getWidth()).isEqualTo(right.getWidth());
            assertThat(shareThatDiffers(flipped(right), left))
                    .as("only the digit of a key is not flipped")
                    .isLessThan(0.03);
            assertThat(shareThatDiffers(flipped(right), right)).isGreaterThan(0.03);
        }
        assertThat(both.get(0).groups().get(0).figure().alternative()).contains("Lying on the left side");
        assertThat(both.get(1).groups().get(0).figure().alternative()).contains("Lying on the right side");
    }

    private static BufferedImage painted(DrillBlock.Figure figure) {
        int dotsPerMillimetre = 4;
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(figure.picture().widthMm() * dotsPerMillimetre),
                (int) Math.ceil(figure.picture().heightMm() * dotsPerMillimetre),
                BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D surface = image.createGraphics();
        surface.setColor(Color.WHITE);
        surface.fillRect(0, 0, image.getWidth(), image.getHeight());
        surface.scale(dotsPerMillimetre, dotsPerMillimetre);
        figure.picture().painter().paint(surface);
        surface.dispose();
        return image;
    }

    private static BufferedImage flipped(BufferedImage image) {
        BufferedImage flipped = new BufferedImage(image.getWidth(), image.getHeight(), image.getType());
        Graphics2D surface = flipped.createGraphics();
        surface.drawImage(image, image.getWidth(), 0, -image.getWidth(), image.getHeight(), null);
        surface.dispose();
        return flipped;
    }

    /** Share of the dots of which a dot of about the same grey is not near in the other picture. */
    private static double shareThatDiffers(BufferedImage one, BufferedImage other) {
        int differing = 0;
        for (int x = 1; x < one.getWidth() - 1; x++) {
            for (int y = 1; y < one.getHeight() - 1; y++) {
                boolean near = false;
                for (int place = 0; place < 9; place++) {
                    int grey = other.getRaster().getSample(x + place % 3 - 1, y + place / 3 - 1, 0);
                    near |= Math.abs(one.getRaster().getSample(x, y, 0) - grey) < 64;
                }
                differing += near ? 0 : 1;
            }
        }
        return differing / (double) (one.getWidth() * one.getHeight());
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
