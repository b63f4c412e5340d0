package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.PracticeLog;
import org.drillsheaf.handout.page.ReminderCard;
import org.drillsheaf.handout.page.Wording;
import org.drillsheaf.saying.Messages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pages that are read from right to left, and what of them is not. */
class RightToLeftTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();
    private static final Messages ARABIC = PRINTER.messagesFor("ar");

    @ParameterizedTest
    @CsvSource({"A4, false", "LETTER, true"})
    void handoutCardAndLogAreValidAndEveryFixedPhraseCanBeFound(Paper paper, boolean large) {
        ClientHandout handout = handout(paper, large);

        for (Document document : List.of(handout, ReminderCard.of(handout), PracticeLog.of(handout))) {
            PdfProof.assertValid(print(document));
        }
        String text = letters(PdfProof.text(print(handout)));
        assertThat(text)
                .contains(ARABIC.say("stop.rest", Map.of()), ARABIC.say("feel.title", Map.of()))
                .contains("لا تبدؤوا اليوم")
                .contains("ضربة على الرأس مع أخذ")
                .contains("الاتكاء على الحائط")
                .contains("Feet on the wall");
        assertThat(Stream.of(ARABIC.say("stop.help.signs", Map.of()).split("[|]")))
                .allSatisfy(sign -> assertThat(text).contains(sign.split(" ")));
    }

    @Test
    void lettersAreJoinedOnThePageAndPlainInWhatIsReadOut() {
        byte[] pdf = print(handout(Paper.A4, false));

        assertThat(PdfProof.structure(pdf).stream().filter(line -> line.contains("Figure")))
                .anyMatch(line -> line.contains("الصورة أ"))
                .allMatch(line -> line.codePoints().noneMatch(point -> point >= 0xFB50 && point <= 0xFEFC));
        assertThat(PdfProof.drawnWith(pdf, "توقفوا").values())
                .allSatisfy(fonts -> assertThat(fonts).anyMatch(font -> font.contains("DejaVuSans")));
    }

    @Test
    void everyPartCarriesItsLanguage() {
        List<String> languages = PdfProof.languages(print(handout(Paper.A4, false)));

        assertThat(languages.get(0)).isEqualTo("ar");
        assertThat(languages).contains("en");
    }

    /** The page is mirrored, the block of a drill in English is not, and a telephone number keeps its order. */
    @Test
    void pageIsMirroredAndABlockInAnotherDirectionIsNot() {
        byte[] pdf = print(handout(Paper.A4, false));
        double middle = 210 / 2.0;

        assertThat(PdfProof.placeOf(pdf, "١", 24))
                .as("plate of the first drill")
                .isGreaterThan(middle);
        assertThat(PdfProof.placeOf(pdf, "2", 24)).as("plate of the second").isLessThan(middle);
        assertThat(letters(PdfProof.text(pdf))).contains("555\u00a00142").doesNotContain("0142 555");
    }

    @Test
    void stepsOfABlockInAnotherDirectionAreAListThatAReaderProgramCounts() {
        ClientHandout both = handout(Paper.A4, false);
        DrillBlock english = both.drills().get(1);
        ClientHandout arabicOnly =
                SampleDocuments.withDrills(both, both.drills().subList(0, 1));
        int items = english.groups().stream().mapToInt(g -> g.steps().size()).sum()
                + english.feel().size()
                + english.notFeel().size();

        assertThat(listItems(both)).isEqualTo(listItems(arabicOnly) + items);
    }

    private static long listItems(ClientHandout handout) {
        return PdfProof.structure(print(handout)).stream()
                .filter(line -> line.strip().equals("LI"))
                .count();
    }

    @Test
    void numbersStandInTheDigitsOfThePage() {
        assertThat(ARABIC.say("number", Map.of("value", 26))).isEqualTo("٢٦");
        assertThat(PRINTER.messagesFor("es").say("number", Map.of("value", 26))).isEqualTo("26");
        assertThat(letters(PdfProof.text(print(handout(Paper.A4, false)), 1))).contains("١٢ نوفمبر ٢٠٢٦", "صفحة ١ من");
    }

    /** One drill that speaks Arabic, and one that does not. */
    private static ClientHandout handout(Paper paper, boolean large) {
        Frame f = SampleDocuments.frame(paper, large);
        Frame arabic = new Frame("ar", f.date(), "سامي", "سامي حداد", f.coach(), f.signedBy(), f.paper(), f.large());
        ClientHandout english = SampleDocuments.handout(arabic, 2);
        return SampleDocuments.withDrills(
                english,
                List.of(inArabic(english.drills().get(0)), english.drills().get(1)));
    }

    private static DrillBlock inArabic(DrillBlock d) {
        List<DrillBlock.Group> groups = d.groups().stream()
                .map(g -> new DrillBlock.Group(
                        g.keyframe(),
                        new DrillBlock.Figure(
                                g.figure().picture(), g.figure().floorMm(), "الصورة أ، البداية: شخص واقف على الحائط"),
                        g.steps().stream()
                                .map(s -> new DrillBlock.Step(
                                        s.number(),
                                        Wording.withOwnNumbers("قف وظهرك إلى الحائط، على بعد ⟦٢٦ سم⟧ منه.")))
                                .toList()))
                .toList();
        DrillBlock.Dose o = d.dose();
        return new DrillBlock(
                d.number(),
                d.id(),
                "الاتكاء على الحائط",
                "ar",
                true,
                "يساعد أسفل ظهرك على الراحة.",
                new DrillBlock.Dose(
                        o.sets(),
                        o.each(),
                        "أنفاس",
                        o.count(),
                        o.sides(),
                        o.side(),
                        o.restSeconds(),
                        o.effortFrom(),
                        o.effortTo(),
                        o.minutes()),
                groups,
                d.arrangement(),
                d.small(),
                d.breath(),
                Optional.empty(),
                List.of("جانبي بطنك", "خلف فخذيك"),
                List.of("شدّ أسفل الظهر"),
                List.of(),
                List.of(),
                d.revision(),
                d.houseVersion(),
                d.checked(),
                d.statureCm());
    }

    /** As a search in a reader sees it: letters, whatever forms they were drawn in. */
    private static String letters(String text) {
        return Normalizer.normalize(text.replace("\u00a0", "⍽"), Normalizer.Form.NFKC)
                .replace("⍽", "\u00a0");
    }

    private static byte[] print(Document document) {
        Problems problems = new Problems();
        byte[] pdf = PRINTER.print(document, problems).orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(problems.all()).as(document.kind().id()).isEmpty();
        return pdf;
    }
}
