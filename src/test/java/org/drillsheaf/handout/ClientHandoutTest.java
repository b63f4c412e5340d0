package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.saying.Messages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClientHandoutTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();
    private static final ClientHandout A4 = SampleDocuments.handout(SampleDocuments.frame(Paper.A4, false), 5);
    private static final byte[] A4_PDF = print(A4);

    @ParameterizedTest
    @CsvSource({"A4, false, 5", "LETTER, false, 3", "A4, true, 3", "A4, false, 12"})
    void isValidForBothStandardsAtOnce(Paper paper, boolean large, int drills) {
        byte[] pdf = print(SampleDocuments.handout(SampleDocuments.frame(paper, large), drills));

        PdfProof.assertValid(pdf);
        assertThat(PdfProof.pageSizes(pdf)).containsOnly(List.of(paper.widthMillimetres(), paper.heightMillimetres()));
    }

    @ParameterizedTest
    @CsvSource({"A4, false", "LETTER, false", "A4, true", "LETTER, true"})
    void spanishPrintsWithoutAnythingStickingOut(Paper paper, boolean large) {
        Frame frame = SampleDocuments.frame(paper, large);
        Frame spanish = new Frame(
                "es", frame.date(), "Marisol", "Marisol Aldecoa", "Tamsin Rook", frame.signedBy(), paper, large);

        byte[] pdf = print(SampleDocuments.handout(spanish, 3));

        assertThat(PdfProof.text(pdf)).contains("Marisol, esta es su práctica", "Llame al 112 ahora");
    }

    @ParameterizedTest
    @CsvSource({
        "A4, false, en",
        "LETTER, false, en",
        "A4, false, es",
        "LETTER, false, es",
        "A4, true, es",
        "LETTER, true, es"
    })
    void stopBoxBeginsOnPageOneInEveryLanguageAndSize(Paper paper, boolean large, String language) {
        Frame frame = SampleDocuments.frame(paper, large);
        Frame translated = new Frame(
                language,
                frame.date(),
                "Maximiliana",
                "Maximiliana Aldecoa",
                "Tamsin Rook",
                frame.signedBy(),
                paper,
                large);

        byte[] pdf = print(SampleDocuments.longestOpening(translated, PRINTER));

        Messages messages = PRINTER.messagesFor(language);
        String first = PdfProof.text(pdf, 1);
        assertThat(first)
                .contains(messages.say("stop.title", Map.of()))
                .contains(messages.say("stop.rest.signs", Map.of()).split("[|]")[1])
                .contains(messages.say("stop.help.signs", Map.of()).split("[|]")[0]);
        if (!large) {
            assertThat(first)
                    .as("all of it, to its last line")
                    .contains(messages.say("stop.again", Map.of())
                            .replaceAll("[*]", "")
                            .split(":")[1]
                            .substring(1, 30));
        }
    }

    @ParameterizedTest
    @CsvSource({"A4, false", "LETTER, false", "A4, true", "LETTER, true"})
    void stopBoxOfALongLanguageBreaksInsideRatherThanLeavingPageOne(Paper paper, boolean large) {
        HandoutPrinter printer = SampleDocuments.printerOfALongLanguage();
        Problems problems = new Problems();

        byte[] pdf = printer.print(
                        SampleDocuments.longestOpening(SampleDocuments.frame(paper, large), printer), problems)
                .orElseThrow(() -> new AssertionError(problems.all()));

        assertThat(PdfProof.text(pdf, 1))
                .contains("Pare si", "dolor que baja por un brazo", "dolor o presión en el pecho");
        assertThat(PdfProof.text(pdf))
                .contains("problemas para ver o hablar", "de control de la vejiga", "un golpe en la cabeza si toma");
    }

    @ParameterizedTest
    @CsvSource({"A4, false, en", "LETTER, true, en", "A4, false, es", "A4, true, es"})
    void referralNoteAndSpanishHandoutAreValid(Paper paper, boolean large, String language) {
        Frame frame = SampleDocuments.frame(paper, large);
        Frame translated = SampleDocuments.unsigned(new Frame(
                language, frame.date(), "Marisol", "Marisol Aldecoa", "Tamsin Rook", frame.signedBy(), paper, large));

        PdfProof.assertValid(print(SampleDocuments.note(translated)));
        PdfProof.assertValid(print(SampleDocuments.longestOpening(translated, PRINTER)));
    }

    @Test
    void structureTreeTellsHeadingsListsTablesAndPictures() {
        List<String> tree = PdfProof.structure(A4_PDF);

        List<String> headings =
                tree.stream().map(String::strip).filter(l -> l.matches("H\\d")).toList();
        assertThat(headings).startsWith("H1").filteredOn(h -> h.equals("H1")).hasSize(1);
        assertThat(headings)
                .filteredOn(h -> h.equals("H2"))
                .as("stop, cautions, order, if this happens, at home, while you practise, faults, 5 drills, questions")
                .hasSize(13);
        List<String> block = PdfProof.section(tree, 1);
        assertThat(block.stream().map(String::strip))
                .as("one drill")
                .containsSubsequence("H2", "H3", "L", "LI", "Lbl", "LBody", "H3", "L", "H3");
        assertThat(block.stream().filter(l -> l.strip().startsWith("Figure")))
                .hasSize(2)
                .allMatch(l -> l.contains("[") && !l.contains("[-]"));
        assertThat(tree.stream().map(String::strip)).contains("Table", "TR", "TH", "TD");
        assertThat(tree)
                .as("layout tables are no tables")
                .filteredOn(l -> l.strip().equals("Table"))
                .hasSize(4);
    }

    @Test
    void decorationAndFurnitureAreNoContent() {
        List<String> tree = PdfProof.structure(A4_PDF);

        assertThat(tree).noneMatch(l -> l.contains("[-]"));
        assertThat(PdfProof.taggedText(A4_PDF)).doesNotContain("page 2 of").contains("Marlow, this is your practice");
    }

    @Test
    void textHoldsEveryStepInOrder() {
        String text = PdfProof.text(A4_PDF);

        String[] steps = A4.drills().stream()
                .flatMap(d -> Stream.concat(
                        Stream.of(d.name()),
                        d.groups().stream()
                                .flatMap(g -> g.steps().stream())
                                .map(s -> s.number() + " " + s.text().text())))
                .map(s -> s.replace('\u00a0', ' '))
                .toArray(String[]::new);
        String drills = text.substring(text.indexOf("If this happens"));
        assertThat(drills.replace('\u00a0', ' ')).containsSubsequence(steps);
    }

    @Test
    void pageOneCarriesEveryStopRule() {
        String first = PdfProof.text(A4_PDF, 1);

        assertThat(first)
                .contains(
                        "fever, feel faint, drank alcohol, have a new symptom",
                        "a new medicine makes you sleepy",
                        "sharp, grows or goes over",
                        "runs down an arm or leg")
                .contains(
                        "slips or gives way",
                        "new tingling, numb or weak",
                        "dizzy, faint or sick",
                        "does not calm in a minute")
                .contains(
                        "racing or skipping heart",
                        "bad headache",
                        "chest pain or pressure",
                        "trouble breathing",
                        "weak face, arm or leg")
                .contains(
                        "trouble speaking",
                        "pass water or control bladder or bowels",
                        "numb skin between the legs",
                        "a fit",
                        "you passed out")
                .contains(
                        "worst headache ever",
                        "knock on the head while on blood thinners",
                        "fever with back pain",
                        "hot swollen joint or calf")
                .contains("keeps you up all night", "half as much tomorrow", "Call 112 now", "555 0142")
                .contains("not a diagnosis or a treatment", "do what they say");
    }

    @Test
    void sameInputGivesTheSameBytesInEveryTimeZone() {
        TimeZone before = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            byte[] far = print(A4);
            TimeZone.setDefault(TimeZone.getTimeZone("America/Halifax"));
            assertThat(print(A4)).isEqualTo(far);
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @Test
    void settingUpAndWhatMendsAFaultAreReadBeforeTheFirstDrill() {
        assertThat(PdfProof.text(A4_PDF))
                .containsSubsequence(
                        "Use a chair with four legs",
                        "You push with your legs. Soften your knees. Let your heels get heavy.",
                        "Drill 1 of 5");
    }

    @Test
    void drillAloneOnTheLastPageLeavesLinesForQuestions() {
        assertThat(PdfProof.text(A4_PDF)).containsSubsequence("Drill 5 of 5", "What do you want to ask");
        assertThat(PdfProof.text(print(SampleDocuments.withDrills(
                        A4, List.of(SampleDocuments.wallLean(1), SampleDocuments.wallLean(2))))))
                .doesNotContain("What do you want to ask");
    }

    @Test
    void unsignedSheetSaysSoOnPageOne() {
        ClientHandout unsigned = SampleDocuments.handout(SampleDocuments.unsigned(A4.frame()), 3);

        assertThat(PdfProof.text(print(unsigned), 1)).contains("Not yet checked by your coach");
        assertThat(PdfProof.text(A4_PDF)).doesNotContain("Not yet checked");
    }

    @Test
    void textsOfAMachineAreMarked() {
        DrillBlock drill = SampleDocuments.machineTranslated(SampleDocuments.wallLean(1));

        assertThat(PdfProof.text(print(SampleDocuments.withDrills(A4, List.of(drill)))))
                .contains("Translated by a machine. Nobody has checked it yet.");
    }

    @Test
    void fontsAreEmbedded() {
        assertThat(PdfProof.fonts(A4_PDF))
                .isNotEmpty()
                .allMatch(font -> font.matches("[A-Z]{6}\\+(SourceSansPro|DejaVuSans).*"));
    }

    @Test
    void twoDrillsShareAPageAndNoneIsSplit() {
        byte[] pdf = A4_PDF;

        assertThat(PdfProof.pages(pdf)).isLessThanOrEqualTo(5);
        for (DrillBlock drill : A4.drills()) {
            String last = "Drill " + drill.number() + " of 5";
            int page = PdfProof.pageOf(pdf, last);
            assertThat(PdfProof.text(pdf, page)).contains(drill.name(), last);
        }
    }

    @Test
    void manyCautionsGoOverToTheNextPage() {
        List<ClientHandout.Caution> forty = java.util.stream.IntStream.rangeClosed(1, 40)
                .mapToObj(n -> new ClientHandout.Caution(
                        List.of(1 + n % 5), SampleDocuments.told("Your body part number " + n + ": be kind to it.")))
                .toList();
        byte[] pdf = print(SampleDocuments.withCautions(A4, forty));

        assertThat(PdfProof.text(pdf)).contains("number 1:", "number 40:");
        PdfProof.assertValid(pdf);
    }

    @Test
    void nameWithoutAGlyphIsAnErrorThatNamesTheSign() {
        Problems problems = new Problems();
        Frame frame = A4.frame();
        Frame strange = new Frame(
                "en", frame.date(), "Ma𓀀ri", "Ma𓀀ri", "Tamsin Rook", Optional.of("Tamsin Rook"), Paper.A4, false);

        assertThat(PRINTER.print(SampleDocuments.handout(strange, 1), problems)).isEmpty();
        assertThat(problems.all())
                .isNotEmpty()
                .allMatch(
                        p -> p.message().contains("has the sign") && p.message().contains("𓀀"));
    }

    @Test
    void controlCharactersAndMarkupInNamesDoNoHarm() {
        Frame frame = A4.frame();
        Frame hostile = new Frame(
                "en",
                frame.date(),
                "Mar\u0000l\u202Eow <fo:block>&",
                "Marlow ${7*7} <#list 1.. as x>",
                "Tamsin\uFFFE Rook\uD800",
                Optional.of("Tamsin Rook"),
                Paper.A4,
                false);

        byte[] pdf = print(SampleDocuments.handout(hostile, 1));

        assertThat(PdfProof.text(pdf)).contains("Marlow <fo:block>&, this is your practice");
        PdfProof.assertValid(pdf);
    }

    @Test
    void greekCyrillicAndHebrewNamesPrint() {
        Frame frame = A4.frame();
        Frame names = new Frame(
                "en",
                frame.date(),
                "Ωλένη Жанна",
                "Ωλένη Жанна",
                "רות לוי",
                Optional.of("Tamsin Rook"),
                Paper.A4,
                false);

        byte[] pdf = print(SampleDocuments.handout(names, 1));

        assertThat(PdfProof.text(pdf)).contains("Ωλένη Жанна");
        PdfProof.assertValid(pdf);
    }

    private static byte[] print(Document document) {
        Problems problems = new Problems();
        byte[] pdf = PRINTER.print(document, problems).orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(problems.all()).isEmpty();
        return pdf;
    }
}
