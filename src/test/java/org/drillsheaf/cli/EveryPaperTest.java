package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.PdfBoxes;
import org.drillsheaf.handout.PdfProof;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The papers of the samples in every language, on both papers and in both sizes of print: valid, and nothing lies over anything.
 * The suite takes one of each kind; {@code -Dpapers=all} takes the whole product.
 */
class EveryPaperTest {
    private static final boolean ALL = "all".equals(System.getProperty("papers"));
    private static final List<String> FEW = List.of("petra-holm", "sami-haddad");
    private static final List<String> LANGUAGES = List.of("en", "es", "ar");

    private static final Map<String, DocumentOrder> ORDERS = new LinkedHashMap<>();
    private static DocumentMaker maker;

    record Wanted(String client, DocumentKind kind, String language, Paper paper, boolean large) {}

    @BeforeAll
    static void readTheSamples() {
        Folders folders = HouseData.folders();
        Knowledge knowledge = HouseData.knowledge(folders);
        maker = Papers.maker(folders, knowledge);
        for (String id : clients()) {
            Path file = Path.of("samples/clients", id + ".yaml");
            Course course = Course.of(HouseData.visits(file, Optional.empty(), knowledge), knowledge);
            Optional<Program> program = course.last().visit().reading().safety().isClear()
                    ? Optional.of((Program) Planning.along(course, knowledge).result())
                    : Optional.empty();
            ORDERS.put(id, Documents.order(course, Optional.empty(), program));
        }
    }

    private static List<String> clients() {
        if (!ALL) {
            return FEW;
        }
        try (Stream<Path> files = Files.list(Path.of("samples/clients"))) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    static List<Wanted> papers() {
        List<Wanted> product = new ArrayList<>();
        for (String client : clients()) {
            for (DocumentKind kind : kinds(ORDERS.get(client))) {
                for (String language : LANGUAGES) {
                    for (Paper paper : Paper.values()) {
                        for (boolean large : new boolean[] {false, true}) {
                            product.add(new Wanted(client, kind, language, paper, large));
                        }
                    }
                }
            }
        }
        return ALL ? product : few(product);
    }

    /** Of each kind that the client can have one, in another language, on another paper and in another size each time. */
    private static List<Wanted> few(List<Wanted> product) {
        List<Wanted> few = new ArrayList<>();
        for (int i = 0; i < product.size(); i += 12) {
            few.add(product.get(i + 8 - i / 12 % 3 * 4 + i / 12 % 4));
        }
        return few;
    }

    @ParameterizedTest
    @MethodSource("papers")
    void paperIsValidAndNothingLiesOverAnything(Wanted wanted) {
        byte[] pdf = print(wanted);

        assertThat(PdfBoxes.faults(pdf)).isEmpty();
        assertThat(PdfBoxes.count(pdf)).isGreaterThan(40);
        PdfProof.assertValid(pdf);
    }

    /** The room between the parts of a drill gives way where two drills then share a page. */
    @Test
    void handoutOfFourShortDrillsTakesFourPages() {
        byte[] pdf = print(new Wanted("sami-haddad", DocumentKind.CLIENT_HANDOUT, "en", Paper.A4, false));

        assertThat(PdfProof.pages(pdf)).isEqualTo(4);
    }

    @Test
    void whatToFeelNeverStandsAloneOnAPageOfLargePrint() {
        byte[] pdf = print(new Wanted("sami-haddad", DocumentKind.CLIENT_HANDOUT, "es", Paper.A4, true));

        List<String> feeling = IntStream.rangeClosed(1, PdfProof.pages(pdf))
                .mapToObj(page -> PdfProof.text(pdf, page))
                .filter(text -> text.contains("No debe sentir"))
                .toList();
        assertThat(feeling).hasSize(4).allMatch(text -> text.contains("Respire"));
    }

    private static byte[] print(Wanted wanted) {
        DocumentOrder order = ORDERS.get(wanted.client());
        Problems problems = new Problems();
        byte[] pdf = maker.print(
                        wanted.kind(),
                        order.with(order.setting()
                                .inLanguage(Optional.of(wanted.language()))
                                .on(wanted.paper())
                                .large(Optional.of(wanted.large()))),
                        problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(problems.all()).isEmpty();
        return pdf;
    }

    private static List<DocumentKind> kinds(DocumentOrder order) {
        if (order.program().isEmpty()) {
            return List.of(DocumentKind.REFERRAL_NOTE);
        }
        List<DocumentKind> kinds = new ArrayList<>(List.of(
                DocumentKind.CLIENT_HANDOUT,
                DocumentKind.REMINDER_CARD,
                DocumentKind.PRACTICE_LOG,
                DocumentKind.COACH_SHEET));
        if (order.change().isPresent()) {
            kinds.add(DocumentKind.PROGRESS_REPORT);
        }
        return kinds;
    }
}
