package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.CoachSheet;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.PracticeLog;
import org.drillsheaf.handout.page.ProgressReport;
import org.drillsheaf.handout.page.ReminderCard;
import org.drillsheaf.handout.paint.Strips;
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

    @ParameterizedTest
    @CsvSource({"A4, false, en", "LETTER, false, es", "A4, true, es"})
    void coachSheetIsValidAndHoldsSixteenItemsOfTheReport(Paper paper, boolean large, String language) {
        byte[] pdf = print(coachSheet(handout(paper, large, language, 1).frame()));

        PdfProof.assertValid(pdf);
        List<String> tree = PdfProof.structure(pdf).stream().map(String::strip).toList();
        assertThat(tree.stream().filter(l -> l.equals("H1"))).hasSize(1);
        assertThat(tree.stream().filter(l -> l.equals("Table")))
                .as("screen, reasons")
                .hasSize(2);
        assertThat(tree.stream().filter(l -> l.equals("LI")).count())
                .as("evidence, report, what was decided")
                .isGreaterThanOrEqualTo(16);
        assertThat(PdfProof.text(pdf))
                .contains("1. ", "16. ", "straight-leg raise full", "Squat depth (−10° ± 5°)", "Tamsin Rook");
    }

    @ParameterizedTest
    @CsvSource({"A4, false, en", "LETTER, false, es", "A4, true, es"})
    void progressReportIsValidAndSaysInWordsAndNumbersWhatTheChartShows(Paper paper, boolean large, String language) {
        Frame frame = handout(paper, large, language, 1).frame();
        ProgressReport report = new ProgressReport(
                frame,
                List.of(SampleDocuments.DATE.minusDays(60), SampleDocuments.DATE.minusDays(28), SampleDocuments.DATE),
                1,
                1,
                0,
                List.of(
                        new ProgressReport.Row(
                                "Thigh drop", true, List.of(panel("left", "better"), panel("right", "worse"))),
                        new ProgressReport.Row("Squat depth", false, List.of(panel("", "no-real-change")))),
                List.of(new ProgressReport.Numbers(
                        "Thigh drop",
                        true,
                        List.of(List.of("−2°", "−4°"), List.of("−9°", "–"), List.of("−13°", "−6°")),
                        "−23°",
                        "9°")),
                "advance",
                2,
                "Restore",
                Optional.empty());

        byte[] pdf = print(report);

        PdfProof.assertValid(pdf);
        List<String> tree = PdfProof.structure(pdf).stream().map(String::strip).toList();
        assertThat(tree.stream().filter(l -> l.startsWith("Figure")))
                .hasSize(3)
                .allMatch(l -> l.contains("−2°") && l.contains("−13°"));
        assertThat(tree.stream().filter(l -> l.equals("Table"))).hasSize(2);
        assertThat(PdfProof.text(pdf)).contains("−23°");
    }

    /** Two parts of one measurement, each with its number: the first is read first, its sign before its digits. */
    @Test
    void partsOfAMeasurementFollowTheDirectionOfThePage() {
        CoachSheet.Row parts =
                row("Standing line", 1, Optional.empty(), Optional.empty(), "الورك −77 cm، الكتف 99 cm", "", "");
        byte[] pdf = print(coachSheet(handout(Paper.A4, false, "ar", 1).frame(), List.of(parts)));

        assertThat(PdfProof.fromLeft(pdf, "9")).isLessThan(PdfProof.fromLeft(pdf, "7"));
        assertThat(PdfProof.fromLeft(pdf, "−")).isLessThan(PdfProof.fromLeft(pdf, "7"));
    }

    /** What did not change has its numbers in the table; in large print their charts would make a third page. */
    @Test
    void progressInLargePrintNamesTheManyThatStayedAndShowsThoseThatChanged() {
        Frame frame = handout(Paper.A4, true, "en", 1).frame();
        List<ProgressReport.Row> rows = new ArrayList<>(List.of(
                new ProgressReport.Row("Thigh drop", true, List.of(panel("left", "better"), panel("right", "worse")))));
        List<ProgressReport.Numbers> numbers = new ArrayList<>();
        for (int test = 1; test <= 10; test++) {
            rows.add(new ProgressReport.Row(
                    "Test " + test, true, List.of(panel("left", "no-real-change"), panel("right", "no-real-change"))));
            numbers.add(new ProgressReport.Numbers(
                    "Test " + test, true, List.of(List.of("−2°", "−4°"), List.of("−3°", "−6°")), "−23°", "9°"));
        }

        byte[] pdf = print(new ProgressReport(
                frame,
                List.of(SampleDocuments.DATE.minusDays(28), SampleDocuments.DATE),
                1,
                20,
                1,
                rows,
                numbers,
                "advance",
                2,
                "Restore",
                Optional.empty()));

        assertThat(PdfProof.pages(pdf)).isEqualTo(2);
        assertThat(PdfProof.structure(pdf).stream().filter(l -> l.contains("Figure")))
                .hasSize(2);
        assertThat(PdfProof.text(pdf, 1)).contains("About the same: Test 1, Test 2");
    }

    private static ProgressReport.Panel panel(String side, String verdict) {
        return new ProgressReport.Panel(
                side,
                "−2°",
                13.2,
                "−13°",
                46.2,
                verdict,
                "11°",
                "9°",
                new Strips(0x1A1A1A, 0xB3471B, 0x595959)
                        .progress(List.of(0.2, 0.4, 0.7), Optional.of(0.9), 0.2, true, side.isEmpty() ? 56 : 66, 8));
    }

    private static CoachSheet coachSheet(Frame frame) {
        return coachSheet(
                frame,
                List.of(
                        row("Side-lying thigh drop", 2, Optional.of("left"), Optional.of(-9.0), "−8°", "−23° ± 3°", ""),
                        row("Side-lying thigh drop", 0, Optional.of("right"), Optional.of(0.5), "−22°", "", ""),
                        row("Joint laxity count", 1, Optional.empty(), Optional.empty(), "1 point", "", "lax from 5")));
    }

    private static CoachSheet coachSheet(Frame frame, List<CoachSheet.Row> screen) {
        List<CoachSheet.Item> items = IntStream.rangeClosed(1, 16)
                .mapToObj(n -> new CoachSheet.Item(
                        String.valueOf(n), n == 16 ? Optional.empty() : Optional.of(SampleDocuments.told("so it is"))))
                .toList();
        return new CoachSheet(
                frame,
                47,
                172,
                screen,
                List.of(new CoachSheet.NotTested(SampleDocuments.told("Squat depth"), "−10° ± 5°")),
                SampleDocuments.told("Extension-dominant, both sides (holds, clear)"),
                List.of(new CoachSheet.Guess(
                        SampleDocuments.told("Extension-dominant, both sides"),
                        SampleDocuments.told("holds"),
                        List.of(SampleDocuments.told("side-lying thigh drop limited on both sides")),
                        List.of(SampleDocuments.told("straight-leg raise full")),
                        List.of())),
                Optional.of(SampleDocuments.told("Repeat hip internal rotation")),
                List.of(new CoachSheet.Why(
                        1,
                        SampleDocuments.told("Wall lean with long breath"),
                        List.of(
                                new CoachSheet.Reason(
                                        Optional.of(SampleDocuments.told("Full exhale")),
                                        3,
                                        SampleDocuments.told("breath out 3 s")),
                                new CoachSheet.Reason(Optional.empty(), 0, SampleDocuments.told("known from before"))),
                        Optional.of(SampleDocuments.told("Sit and hum")),
                        4)),
                SampleDocuments.told("Proved best."),
                List.of(new CoachSheet.Aim(SampleDocuments.told("Full exhale"), 5, 4, 3)),
                List.of(SampleDocuments.told("Your left hip: do not bend it past a square corner.")),
                List.of(SampleDocuments.told("Restore, side abdominals 2: likes them")),
                List.of(),
                Optional.of(1.2),
                items);
    }

    private static CoachSheet.Row row(
            String test,
            int rows,
            Optional<String> side,
            Optional<Double> errors,
            String value,
            String cutoff,
            String reason) {
        return new CoachSheet.Row(
                SampleDocuments.told(test),
                rows,
                side,
                errors,
                value,
                "limited",
                SampleDocuments.told("limited"),
                cutoff,
                reason);
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
