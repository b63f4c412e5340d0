package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.PracticeLog;
import org.drillsheaf.handout.page.ReminderCard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The papers that go home beside the handout. */
class FurtherDocumentsTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();

    @ParameterizedTest
    @CsvSource({"A4, false, en, 5", "LETTER, false, es, 12", "A4, true, es, 1", "LETTER, true, en, 3"})
    void cardAndLogAreValidAndNothingSticksOut(Paper paper, boolean large, String language, int drills) {
        ClientHandout handout = handout(paper, large, language, drills);

        for (Document document : List.of(ReminderCard.of(handout), PracticeLog.of(handout))) {
            byte[] pdf = print(document);
            PdfProof.assertValid(pdf);
            assertThat(PdfProof.structure(pdf).stream().map(String::strip).filter(l -> l.equals("H1")))
                    .as("one title in " + document.kind().id())
                    .hasSize(1);
            assertThat(print(document)).isEqualTo(pdf);
        }
    }

    @Test
    void cardOfFiveDrillsIsOneSheetThatReadsTheStopRulesFirst() {
        byte[] pdf = print(ReminderCard.of(handout(Paper.A4, false, "en", 5)));

        assertThat(PdfProof.pages(pdf)).isEqualTo(1);
        List<String> tree = PdfProof.structure(pdf).stream().map(String::strip).toList();
        assertThat(tree).containsSubsequence("H1", "H2", "L", "Sect", "H2", "Sect", "H2");
        assertThat(tree.stream().filter(l -> l.startsWith("Figure"))).hasSize(5).noneMatch(l -> l.contains("[-]"));
        assertThat(PdfProof.text(pdf)).contains("sharp or growing pain", "112", "555 0142");
    }

    @Test
    void sixthDrillGoesOntoASecondSheetAndTheStopRulesStayOnTheFirst() {
        byte[] pdf = print(ReminderCard.of(handout(Paper.LETTER, false, "en", 12)));

        assertThat(PdfProof.pages(pdf)).isEqualTo(3);
        assertThat(PdfProof.text(pdf, 1)).contains("Stop if");
        assertThat(PdfProof.text(pdf, 2)).doesNotContain("Stop if");
    }

    @Test
    void logHasATableAWeekFromTheDayOfTheVisitWithARowADrill() {
        PracticeLog log = PracticeLog.of(handout(Paper.A4, false, "en", 5));
        byte[] pdf = print(log);

        assertThat(log.weeks()).hasSize(4);
        assertThat(log.weeks().get(1).days().get(0)).isEqualTo(SampleDocuments.DATE.plusDays(7));
        assertThat(PdfProof.pages(pdf)).isEqualTo(1);
        List<String> tree = PdfProof.structure(pdf).stream().map(String::strip).toList();
        assertThat(tree.stream().filter(l -> l.equals("Table"))).hasSize(4);
        assertThat(tree.stream().filter(l -> l.equals("TR"))).hasSize(4 * (1 + 5 + 1));
        assertThat(tree.stream().filter(l -> l.equals("TH"))).hasSize(4 * (9 + 5 + 1));
        assertThat(PdfProof.text(pdf)).contains("Week 4 · from 3 Dec", "Bring back on 10 December 2026");
    }

    private static ClientHandout handout(Paper paper, boolean large, String language, int drills) {
        Frame f = SampleDocuments.frame(paper, large);
        return SampleDocuments.handout(
                new Frame(language, f.date(), f.called(), f.fullName(), f.coach(), f.signedBy(), paper, large), drills);
    }

    private static byte[] print(Document document) {
        Problems problems = new Problems();
        byte[] pdf = PRINTER.print(document, problems).orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(problems.all()).as(document.kind().id()).isEmpty();
        return pdf;
    }
}
