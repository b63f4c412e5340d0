package org.drillsheaf.handout.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillsheaf.Problems;
import org.junit.jupiter.api.Test;

/** The count before the page is set is what the page then has. */
class LineCountTest {
    private static final FontFiles FONTS = new FontFiles();
    private static final LineCount COUNT = new LineCount(FONTS);
    private static final double POINTS = 20;
    private static final List<String> SPANISH = List.of(
            "Túmbese boca arriba y apoye los pies en la pared, separados unos 20 cm.",
            "Doble las caderas y las rodillas en ángulo recto. Sus caderas quedan a unos 42 cm de la pared.",
            "Suelte el aire hasta quedarse vacío. Deje que las costillas bajen.",
            "Sus muslos de atrás trabajan");
    private static final List<String> ARABIC = List.of(
            "استلقوا على ظهوركم وضعوا أقدامكم على الحائط، بينها نحو ٢٠ سم.",
            "أخرجوا الهواء حتى آخره، ودعوا أضلاعكم تهبط.");

    @Test
    void linesAreThoseOfThePage() {
        for (double millimetres : List.of(58.0, 82.5, 109.0)) {
            for (String text : SPANISH) {
                assertThat(COUNT.lines(text, POINTS, millimetres, false, false))
                        .as("%s in %s mm", text, millimetres)
                        .isEqualTo(onThePage(text, millimetres));
            }
        }
    }

    @Test
    void joinedLettersAreCountedAsTheyAreJoined() {
        for (String text : ARABIC) {
            assertThat(COUNT.lines(text, POINTS, 82.5, false, true)).isEqualTo(onThePage(text, 82.5));
        }
    }

    @Test
    void boldIsWiderAndATextWithoutLettersTakesNoLine() {
        assertThat(COUNT.width("rodillas", POINTS, true, false))
                .isGreaterThan(COUNT.width("rodillas", POINTS, false, false));
        assertThat(COUNT.width("膝", POINTS, false, false)).isGreaterThan(COUNT.width("k", POINTS, false, false));
        assertThat(COUNT.width("", POINTS, false, false)).isZero();
    }

    private static int onThePage(String text, double millimetres) {
        String page = SmallPage.of(
                RightToLeft.shaped("<fo:block-container width=\"" + millimetres + "mm\"><fo:block font-size=\""
                        + POINTS + "pt\" line-height=\"30pt\" font-family=\""
                        + (ARABIC.contains(text) ? "DejaVu Sans, Source Sans Pro" : "Source Sans Pro, DejaVu Sans")
                        + "\">" + text
                        + "</fo:block></fo:block-container>"));
        Problems problems = new Problems();
        byte[] pdf = new PageSetter(FONTS)
                .set("test", page, new PictureShelf(), Instant.EPOCH, problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
        List<Float> baselines = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper reader = new PDFTextStripper() {
                @Override
                protected void processTextPosition(org.apache.pdfbox.text.TextPosition letter) {
                    if (!baselines.contains(letter.getY())) {
                        baselines.add(letter.getY());
                    }
                }
            };
            reader.getText(document);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return baselines.size();
    }
}
