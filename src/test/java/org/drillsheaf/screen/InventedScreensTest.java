package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows of invented screens, each read by the whole chain from YAML to reading. The tables are in the test resources. */
class InventedScreensTest {

    static List<InventedScreen> table() {
        return InventedScreen.table("invented-screens.txt");
    }

    static List<InventedScreen> further() {
        return InventedScreen.table("further-screens.txt");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("further")
    void everyFurtherRowReadsAsWritten(InventedScreen row) {
        assertThat(InventedScreen.inShort(row.read())).as(row.toString()).isEqualTo(row.reading());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("table")
    void everyRowReadsAsWritten(InventedScreen row) {
        assertThat(InventedScreen.inShort(row.read())).as(row.toString()).isEqualTo(row.reading());
    }

    @Test
    void theTableIsWholeAndTheAgreementIsPrinted() {
        List<InventedScreen> rows = table();
        long agree = rows.stream()
                .filter(r -> InventedScreen.inShort(r.read()).equals(r.reading()))
                .count();
        System.out.println("invented screens: " + agree + " of " + rows.size() + " read as written");

        assertThat(rows)
                .extracting(InventedScreen::number)
                .doesNotHaveDuplicates()
                .hasSize(44);
    }
}
