package org.drillsheaf.exchange.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text of a drill may become a formula in somebody's spreadsheet. */
class CellTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+44", "-5 cm", "@home", "'=1", "''-x", "=cmd|' /C calc'!A0"})
    void whatLooksLikeAFormulaGetsAnApostropheAndLosesIt(String text) {
        assertThat(CellText.escape(text)).isEqualTo("'" + text);
        assertThat(CellText.plain(CellText.escape(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Sit tall.", "'Sit' tall", "1 - 2", "’=", ""})
    void anyOtherTextStaysAsItIs(String text) {
        assertThat(CellText.escape(text)).isEqualTo(text);
        assertThat(CellText.plain(text)).isEqualTo(text);
    }

    @Property
    void everyTextComesBack(@ForAll String text) {
        assertThat(CellText.plain(CellText.escape(text))).isEqualTo(CellText.normal(text));
        assertThat(CellText.escape(text)).doesNotMatch("(?s)^[=+\\-@\\t\\r].*");
    }
}
