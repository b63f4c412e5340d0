package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.CatalogueBook;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.Told;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The clinic's book: contents that lead to the page, one heading a drill, words and pictures side by side. */
class CatalogueBookTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();
    private static final int FAMILIES = 3;
    private static final int DRILLS = 3;

    @ParameterizedTest
    @CsvSource({"A4, false, en", "A4, false, ar", "LETTER, true, ar"})
    void bookIsValidAndItsContentsNameThePageOfEachDrill(Paper paper, boolean large, String language) {
        Problems problems = new Problems();

        byte[] pdf = PRINTER.print(book(paper, large, language), problems)
                .orElseThrow(() -> new AssertionError(problems.all()));

        assertThat(problems.all()).isEmpty();
        PdfProof.assertValid(pdf);
        assertThat(PdfBoxes.faults(pdf)).isEmpty();
        List<String> tree = PdfProof.structure(pdf).stream().map(String::strip).toList();
        assertThat(tree.stream().filter(l -> l.equals("TOCI"))).hasSize(2 * FAMILIES * DRILLS);
        assertThat(tree.stream().filter(l -> l.equals("H3"))).hasSize(FAMILIES * DRILLS);
        assertThat(tree.stream().filter(l -> l.startsWith("Figure")))
                .hasSize(2 * FAMILIES * DRILLS)
                .allMatch(l -> l.contains("a person stands"));
        if (!large) {
            assertThat(PdfProof.half(pdf, 1, language.equals("en")))
                    .as("where reading begins")
                    .contains("Family 0")
                    .doesNotContain("Family 2");
            assertThat(PdfProof.half(pdf, 1, !language.equals("en")))
                    .as("the second file of the contents")
                    .contains("Family 2")
                    .doesNotContain("Family 0");
        }
        if (language.equals("en")) {
            int page = PdfProof.pageOf(pdf, "wall-lean-5, version");
            assertThat(PdfProof.text(pdf, 1)).containsPattern("Wall lean 5 [. ]*" + page);
        }
    }

    private static CatalogueBook book(Paper paper, boolean large, String language) {
        Frame f = SampleDocuments.frame(paper, large);
        Frame frame = new Frame(language, f.date(), "Clinic", "Clinic", "Clinic", Optional.empty(), paper, large);
        DrillBlock sample = SampleDocuments.handout(f, 1).drills().get(0);
        List<CatalogueBook.Family> families = IntStream.range(0, FAMILIES)
                .mapToObj(family -> new CatalogueBook.Family(
                        "family-" + family,
                        SampleDocuments.told("Family " + family),
                        IntStream.range(family * DRILLS, (family + 1) * DRILLS)
                                .mapToObj(number -> entry(number, sample))
                                .toList()))
                .toList();
        List<CatalogueBook.Place> all = families.stream()
                .flatMap(family -> family.drills().stream())
                .map(drill -> new CatalogueBook.Place(drill.id(), drill.name()))
                .toList();
        return new CatalogueBook(frame, 170, families, List.of(new CatalogueBook.PhaseList(1, "Settle", all)));
    }

    private static CatalogueBook.Entry entry(int number, DrillBlock sample) {
        Told steps = SampleDocuments.told("Stand with your back to a wall. Bend your knees a little and breathe out.");
        return new CatalogueBook.Entry(
                "wall-lean-" + number,
                SampleDocuments.told("Wall lean " + number),
                1 + number % DRILLS,
                List.of("Settle"),
                List.of(new CatalogueBook.Aim(SampleDocuments.told("Full exhale"), 3)),
                List.of(SampleDocuments.told("wall")),
                SampleDocuments.told("Lets your lower back have a rest."),
                sample.groups().stream()
                        .limit(2)
                        .map(g -> new DrillBlock.Figure(g.figure().picture(), 0, "Wall lean: a person stands"))
                        .toList(),
                List.of(steps, steps, steps, steps),
                List.of(SampleDocuments.told("Sides of your belly at work")),
                List.of(SampleDocuments.told("Your lower back at work")),
                List.of(),
                3,
                YearMonth.of(2026, 10),
                "Tamsin Rook");
    }
}
