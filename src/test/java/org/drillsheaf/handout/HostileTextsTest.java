package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names and notes come from anywhere. They are printed as letters, and nothing of them is run, read or lost. */
class HostileTextsTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<fo:block color='red'>x</fo:block>",
                "&amp;&x;<!DOCTYPE a>]]>",
                "${1+1}[=2+2]<#list 1..9 as x>y</#list>",
                "*a* {name} | %s {count, plural, one {x}}",
                "url('file:/etc/passwd')",
            })
    void markupIsPrintedAsItWasTyped(String name) {
        byte[] pdf = print(name);

        assertThat(plain(PdfProof.text(pdf))).contains(plain(name));
        PdfProof.assertValid(pdf);
    }

    /** A mark that turns the direction of text would let a name read as another; a control would end the page. */
    @Test
    void controlsAndMarksOfDirectionAreLeftOut() {
        byte[] pdf = print("Ma\u0000r\u001b\u0008a \u202eedisni\u2066 \ufffe\ud800Q\ue000uill\u200b\u2028");

        assertThat(PdfProof.text(pdf)).contains("Mara edisni Quill");
        PdfProof.assertValid(pdf);
    }

    /** The longest that a client file may hold, in the widest letter and without a place to break. */
    @Test
    void theLongestNameStaysOnThePage() {
        byte[] pdf = print("W".repeat(60));

        assertThat(PdfBoxes.faults(pdf)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"W", "slowly ", "من "})
    void aNoteOfTenThousandLettersIsPrintedWhole(String word) {
        String note = word.repeat(10_000 / word.length());
        Problems problems = new Problems();
        HandoutOrder order = SamplePrograms.withNote(
                SamplePrograms.order("en", Paper.A4, false, List.of("wall-lean-breath")), Optional.of(note));
        byte[] pdf = new HandoutMaker(
                        PRINTER, SamplePrograms.LIBRARY.catalogue().words().equipment())
                .handout(order, problems)
                .flatMap(handout -> PRINTER.print(handout, problems))
                .orElseThrow(() -> new AssertionError(problems.all()));

        assertThat(problems.all()).isEmpty();
        assertThat(PdfBoxes.faults(pdf)).isEmpty();
        String text = plain(PdfProof.text(pdf));
        assertThat(text.length() - text.replace(word.strip(), "").length())
                .isGreaterThanOrEqualTo(note.replace(" ", "").length());
    }

    private static byte[] print(String name) {
        Frame frame = SampleDocuments.frame(Paper.A4, false);
        Problems problems = new Problems();
        Optional<byte[]> pdf = PRINTER.print(
                SampleDocuments.handout(
                        new Frame("en", frame.date(), name, name, name, Optional.of(name), Paper.A4, false), 1),
                problems);
        assertThat(problems.all()).isEqualTo(List.of());
        return pdf.orElseThrow();
    }

    private static String plain(String text) {
        return text.replaceAll("\\s", "").replace("∗", "*");
    }
}
