package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fourteen rows of Quinlan JR, Induction of decision trees, Machine Learning 1986;1:81–106. */
class InformationGainTest {
    private static final List<String> ROWS = List.of(
            "Sunny Hot High Weak No",
            "Sunny Hot High Strong No",
            "Overcast Hot High Weak Yes",
            "Rain Mild High Weak Yes",
            "Rain Cool Normal Weak Yes",
            "Rain Cool Normal Strong No",
            "Overcast Cool Normal Strong Yes",
            "Sunny Mild High Weak No",
            "Sunny Cool Normal Weak Yes",
            "Rain Mild Normal Weak Yes",
            "Sunny Mild Normal Strong Yes",
            "Overcast Mild High Strong Yes",
            "Overcast Hot Normal Weak Yes",
            "Rain Mild High Strong No");

    @Test
    void entropyOfNineAgainstFive() {
        assertThat(InformationGain.entropy(9, 5)).isCloseTo(0.940286, within(5e-7));
    }

    @ParameterizedTest
    @CsvSource({
        "2, 3, 0.970951", "4, 0, 0", "3, 4, 0.985228", "6, 1, 0.591673",
        "6, 2, 0.811278", "3, 3, 1.0", "2, 2, 1.0", "4, 2, 0.918296"
    })
    void entropyOfTheBranches(double yes, double no, double bits) {
        assertThat(InformationGain.entropy(yes, no)).isCloseTo(bits, within(5e-7));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.246750", "1, 0.029223", "2, 0.151836", "3, 0.048127"})
    void gainOfEveryAttribute(int column, double bits) {
        Map<String, double[]> groups = new LinkedHashMap<>();
        for (String row : ROWS) {
            String[] words = row.split(" ");
            groups.computeIfAbsent(words[column], k -> new double[2])[words[4].equals("Yes") ? 0 : 1]++;
        }

        assertThat(InformationGain.gain(groups.values().toArray(double[][]::new)))
                .isCloseTo(bits, within(5e-7));
    }
}
