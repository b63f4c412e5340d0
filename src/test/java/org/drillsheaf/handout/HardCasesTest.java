package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.PracticeLog;
import org.drillsheaf.handout.page.ReminderCard;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Long names, many drills or one, forty cautions or none: nothing lies over anything, and nothing is lost. */
class HardCasesTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();
    private static final String LONG_CLIENT = "Maximiliana-Konstantina Featherstonehaugh de la Vega y Ordóñez";
    private static final String LONG_DRILL = "Half kneeling with the back foot on a cushion, arms far overhead";

    @ParameterizedTest
    @CsvSource({
        "A4, false, en, 12, 0",
        "LETTER, false, es, 12, 40",
        "A4, true, es, 2, 40",
        "LETTER, true, en, 1, 0",
        "A4, false, ar, 5, 12",
        "LETTER, false, en, 1, 1",
        "LETTER, true, ar, 6, 1"
    })
    void nothingLiesOverAnything(Paper paper, boolean large, String language, int drills, int cautions) {
        ClientHandout handout = handout(paper, large, language, drills, cautions);

        for (Document document : List.of(handout, ReminderCard.of(handout), PracticeLog.of(handout))) {
            Problems problems = new Problems();
            byte[] pdf = PRINTER.print(document, problems).orElseThrow(() -> new AssertionError(problems.all()));
            assertThat(problems.all()).as(document.kind().id()).isEmpty();
            assertThat(PdfBoxes.faults(pdf)).as(document.kind().id()).isEmpty();
            assertThat(PdfProof.taggedText(pdf)).as(document.kind().id()).contains(LONG_DRILL.split(" "));
        }
    }

    private static ClientHandout handout(Paper paper, boolean large, String language, int drills, int cautions) {
        Frame f = SampleDocuments.frame(paper, large);
        Frame frame = new Frame(
                language, f.date(), "Maximiliana-Konstantina", LONG_CLIENT, f.coach(), f.signedBy(), paper, large);
        ClientHandout handout = SampleDocuments.handout(frame, drills);
        List<DrillBlock> blocks = IntStream.range(0, drills)
                .mapToObj(i -> i % 2 == 0
                        ? SampleDocuments.named(handout.drills().get(i), LONG_DRILL)
                        : handout.drills().get(i))
                .toList();
        List<ClientHandout.Caution> texts = IntStream.rangeClosed(1, cautions)
                .mapToObj(n -> new ClientHandout.Caution(
                        n % 3 == 0 ? List.of() : List.of(1 + n % drills),
                        SampleDocuments.told("Your body part number " + n
                                + ": be kind to it, move it slowly, and do not let it carry all of your weight.")))
                .toList();
        return SampleDocuments.withCautions(SampleDocuments.withDrills(handout, blocks), texts);
    }
}
