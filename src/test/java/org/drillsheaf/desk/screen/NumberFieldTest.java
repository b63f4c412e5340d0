package org.drillsheaf.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.words.Words;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a number field takes and shows in each language of the window, and the number that comes of it. */
class NumberFieldTest {
    @BeforeAll
    static void toolkit() {
        DeskRun.startToolkit();
    }

    private static NumberField field(String language) {
        return new NumberField("Comfortable breath out, s", Words.in(language), () -> {});
    }

    @ParameterizedTest
    @CsvSource({
        "en, '1.6', 1.6, 1.6",
        "en, '1,6', 1.6, 1.6",
        "es, '1.6', '1,6', 1.6",
        "es, '1,6', '1,6', 1.6",
        "es, '-12.5', '−12,5', -12.5",
        "es, '−7', '−7', -7"
    })
    void pointAndCommaMeanTheSameAndTheLanguagesOwnIsShown(String language, String typed, String shown, double number) {
        DeskRun.fx(() -> {
            NumberField field = field(language);
            for (char sign : typed.toCharArray()) {
                field.field().appendText(String.valueOf(sign));
            }
            assertThat(field.field().getText()).isEqualTo(shown);
            assertThat(field.number()).contains(number);
            return true;
        });
    }

    @ParameterizedTest
    @CsvSource({"en, 2.4, 2.4", "es, 2.4, '2,4'", "es, -3.0, −3", "es, 162, 162"})
    void whatTheRecordHoldsIsShownInTheLanguageOfTheWindow(String language, String written, String shown) {
        DeskRun.fx(() -> {
            NumberField field = field(language);
            field.show(Optional.of(written));
            assertThat(field.field().getText()).isEqualTo(shown);
            assertThat(field.number()).contains(Double.parseDouble(written));
            return true;
        });
    }
}
