package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Clients and coaches keep their own names, in the script they are written in. */
class NamesTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();

    /** Each sign has a drawn glyph, and a search finds the name as it is written. */
    @ParameterizedTest
    @CsvSource({
        "Łucja Ďuriš Ñúñez Șerban Nguyễn Thị Hằng, Ωλένη Σταύρου Жанна Ємець Ђорђевић, SourceSansPro",
        "רות לוי, فاطمة, DejaVuSans",
        "诸葛云 諸葛雲, 齋藤さくら サクラ・髙橋, NotoSansSC"
    })
    void everySignOfANameIsDrawnAndFound(String client, String coach, String font) {
        byte[] pdf = print(frame(client, coach));

        String text = PdfProof.text(pdf).replace(" ", "");
        for (String name : List.of(client, coach)) {
            assertThat(text).contains(name.replace(" ", ""));
            assertThat(PdfProof.drawnWith(pdf, name))
                    .allSatisfy((sign, fonts) ->
                            assertThat(fonts).as("fonts that draw “%s”", sign).anyMatch(f -> f.contains(font)));
        }
        PdfProof.assertValid(pdf);
    }

    /** The font prints the quotation mark and a modifier letter with one glyph; a search must find what was written. */
    @Test
    void anApostropheIsFoundAsItWasWritten() {
        assertThat(PdfProof.text(print(frame("Dara O’Neill", "Tamsin Rook")))).contains("Dara O’Neill, this is");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Ma𓀀ri", "हरि", "ไพลิน", "한별"})
    void aSignThatNoFontHasIsNamedWithItsPlaceAndNothingIsPrinted(String name) {
        Problems problems = new Problems();

        assertThat(PRINTER.print(SampleDocuments.handout(frame(name, "Tamsin Rook"), 1), problems))
                .isEmpty();
        assertThat(problems.all()).isNotEmpty().allSatisfy(p -> {
            assertThat(p.what())
                    .startsWith("No font of the page has the sign “")
                    .contains(name);
            assertThat(p.remedy()).isEqualTo("Write it in other letters, or add a font that has it");
        });
    }

    private static byte[] print(Frame frame) {
        Problems problems = new Problems();
        Optional<byte[]> pdf = PRINTER.print(SampleDocuments.handout(frame, 1), problems);
        assertThat(problems.all()).isEqualTo(List.of());
        return pdf.orElseThrow();
    }

    private static Frame frame(String name, String coach) {
        Frame frame = SampleDocuments.frame(Paper.A4, false);
        return new Frame("en", frame.date(), name, name, coach, Optional.of(coach), Paper.A4, false);
    }
}
