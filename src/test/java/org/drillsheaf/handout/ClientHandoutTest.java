package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drillsheaf.Problems;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.Paper;
import org.junit.jupiter.api.Test;

class ClientHandoutTest {
    private static final HandoutPrinter PRINTER = SampleDocuments.printer();

    @Test
    void fiveDrillsOnA4AreValidForBothStandards() throws IOException {
        byte[] pdf = print(SampleDocuments.handout(SampleDocuments.frame(Paper.A4, false), 5));

        String folder = System.getProperty("handout.keep");
        if (folder != null) Files.write(Path.of(folder, "a4-5.pdf"), pdf);
        PdfProof.assertValid(pdf);
    }

    private static byte[] print(Document document) {
        Problems problems = new Problems();
        byte[] pdf = PRINTER.print(document, problems).orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(problems.all()).isEmpty();
        return pdf;
    }
}
