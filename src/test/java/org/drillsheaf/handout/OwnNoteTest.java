package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The coach's own words on the client's handout. */
class OwnNoteTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();

    private static ClientHandout handout(Optional<String> note, boolean large, String language) {
        Problems problems = new Problems();
        HandoutOrder order = SamplePrograms.order(language, Paper.A4, large, List.of("wall-lean-breath"));
        return new HandoutMaker(
                        PRINTER, SamplePrograms.LIBRARY.catalogue().words().equipment())
                .handout(SamplePrograms.withNote(order, note), problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
    }

    private static byte[] printed(ClientHandout handout) {
        Problems problems = new Problems();
        byte[] pdf = PRINTER.print(handout, problems).orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(problems.all()).isEmpty();
        return pdf;
    }

    @Test
    void standsBeforeTheDrillsWithTheCoachsName() {
        byte[] pdf = printed(handout(Optional.of("Ring me on Friday.\n\nYou did well today."), false, "en"));

        PdfProof.assertValid(pdf);
        String text = PdfProof.taggedText(pdf);
        assertThat(text).contains("From Tamsin Rook", "Ring me on Friday.", "You did well today.");
        assertThat(text.indexOf("From Tamsin Rook"))
                .isBetween(text.indexOf("Put it right"), text.lastIndexOf("Wall lean with long breath"));
    }

    @Test
    void nothingIsPrintedWhereNothingWasWritten() {
        ClientHandout without = handout(Optional.empty(), false, "en");

        assertThat(handout(Optional.of(" \n \t\n"), false, "en").note()).isEmpty();
        assertThat(PdfProof.taggedText(printed(without))).doesNotContain("From Tamsin Rook");
    }

    @Test
    void markupAndControlSignsArePrintedAsTextOrNotAtAll() {
        byte[] pdf = printed(
                handout(Optional.of("<b>${house.name}</b> & ]]> <#stop> \u0000\u001b[1m\u202E\uFFFFend"), false, "en"));

        assertThat(PdfProof.taggedText(pdf)).contains("<b>${house.name}</b> & ]]> <#stop> [1mend");
    }

    @ParameterizedTest
    @CsvSource({"W, true, en", "كلمة, false, ar"})
    void fiveThousandSignsGoOnOverThePages(String part, boolean large, String language) {
        String note = (part + (part.length() > 1 ? " " : "")).repeat(5000).substring(0, 5000);

        byte[] pdf = printed(handout(Optional.of(note), large, language));

        assertThat(PdfBoxes.faults(pdf)).isEmpty();
        assertThat(PdfProof.pages(pdf)).isGreaterThan(2);
    }
}
