package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.client.Sex;
import org.drillsheaf.client.Visit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A published decision table through the same reader and rules, with tests that a clinic adds in its own file: hip angle above
 * 0 = short one-joint hip flexors; knee below 67 = short two-joint flexors; passive knee extension above 40 = short hamstrings;
 * ankle below 18 with the knee straight and bent = short soleus, below 18 straight but above 18 bent = short gastrocnemius. Source:
 * BMC Sports Sci Med Rehabil 2021, doi 10.1186/s13102-021-00242-y, table 4.
 */
class MuscleLengthTableTest {
    private static final String TESTS =
            """
            tests:
              - {id: hanging-hip, name: Hip angle with the leg hanging, sided: true, unit: deg, step: 1, plausible: [-60, 60], minutes: 1,
                 norm: {threshold: {higher-is-fuller: false, cut-offs: [{value: 0, source: &SRC}], beyond: []}},
                 errors: [{sem: 1, population: table, source: &SRC}], sign: plus = hip bent, steps: [as published], ends: as published, source: &SRC}
              - {id: hanging-knee, name: Knee angle with the leg hanging, sided: true, unit: deg, step: 1, plausible: [0, 150], minutes: 1,
                 norm: {threshold: {higher-is-fuller: true, cut-offs: [{value: 67, source: &SRC}], beyond: []}},
                 errors: [{sem: 1, population: table, source: &SRC}], sign: plus = knee bent, steps: [as published], ends: as published, source: &SRC}
              - {id: knee-lack, name: Passive knee extension with the hip at 90, sided: true, unit: deg, step: 1, plausible: [0, 120], minutes: 1,
                 norm: {threshold: {higher-is-fuller: false, cut-offs: [{value: 40, source: &SRC}], beyond: []}},
                 errors: [{sem: 1, population: table, source: &SRC}], sign: plus = short of straight, steps: [as published], ends: as published, source: &SRC}
              - {id: ankle-straight, name: Ankle with the knee straight, sided: true, unit: deg, step: 1, plausible: [-30, 60], minutes: 1,
                 norm: {threshold: {higher-is-fuller: true, cut-offs: [{value: 18, source: &SRC}], beyond: []}},
                 errors: [{sem: 1, population: table, source: &SRC}], sign: plus = foot up, steps: [as published], ends: as published, source: &SRC}
              - {id: ankle-bent, name: Ankle with the knee bent, sided: true, unit: deg, step: 1, plausible: [-30, 60], minutes: 1,
                 norm: {threshold: {higher-is-fuller: true, cut-offs: [{value: 18, source: &SRC}], beyond: []}},
                 errors: [{sem: 1, population: table, source: &SRC}], sign: plus = foot up, steps: [as published], ends: as published, source: &SRC}
            """
                    .replace("&SRC", "{kind: published, text: table 4}");

    private static final String RULES =
            """
            definitions: {}
            groups: {}
            presentations:
              - {id: one-joint-hip-flexors, required: [limited hanging-hip this], &REST}
              - {id: two-joint-flexors, required: [limited hanging-knee this], &REST}
              - {id: hamstrings, required: [limited knee-lack this], &REST}
              - {id: soleus, required: [limited ankle-straight this, limited ankle-bent this], &REST}
              - {id: gastrocnemius, required: [limited ankle-straight this, free ankle-bent this], &REST}
            none: {id: none, name: Nothing short, meaning: Nothing short.}
            layers:
              underneath: {names: [], requires: limited hanging-hip both, side-when: limited hanging-hip this, words: none}
              on-top: {of: soleus, name: soleus, when: limited ankle-bent both, words: none}
              hip-fronts: {when: limited hanging-hip both, words: none}
              expected-first: right
            conditions: []
            contradictions: []
            """
                    .replace(
                            "&REST",
                            "name: short, meaning: short, sided: true, source: {kind: published, text: table 4}");

    private static final ReadingRules TABLE = rules();

    private static ReadingRules rules() {
        Problems problems = new Problems();
        Battery battery = new BatteryReader(House.schema("tests"))
                .read(House.yaml(House.text(Path.of("shared/tests.yaml"))), House.yaml(TESTS), problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
        Presentations presentations = new PresentationReader(House.schema("presentations"), battery)
                .read(House.yaml(RULES), problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        return new ReadingRules(battery, presentations, House.RULES.safetyGate());
    }

    private static String heldOnTheLeft(int hip, int knee, int lack, String straight, String bent) {
        String screen =
                """
                hanging-hip: {unit: deg, left: %d}
                hanging-knee: {unit: deg, left: %d}
                knee-lack: {unit: deg, left: %d}
                ankle-straight: {unit: deg, left: %s}
                ankle-bent: {unit: deg, left: %s}
                """
                        .formatted(hip, knee, lack, straight, bent);
        Client client = House.client(Optional.of(Sex.MALE), 1990);
        Visit visit = InventedScreen.visit(InventedScreen.DAY, screen, java.util.Map.of());
        Problems problems = new Problems();
        Screen read = new ScreenReader(TABLE.battery())
                .read(new ClientFile("table.yaml", client, List.of(), List.of(visit)), problems)
                .get(0);
        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        return TABLE.read(client, List.of(), visit, read, Optional.empty()).supported().stream()
                .filter(p -> p.side().equals(Optional.of(Side.LEFT)))
                .map(PresentationReading::id)
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource({
        "5, 80, 20, 25, 30, one-joint-hip-flexors",
        "-10, 50, 20, 25, 30, two-joint-flexors",
        "-10, 80, 55, 25, 30, hamstrings",
        "-10, 80, 20, 10, 12, soleus",
        "-10, 80, 20, 10, 25, gastrocnemius",
        "5, 50, 55, 10, 12, one-joint-hip-flexors two-joint-flexors hamstrings soleus",
        "-10, 80, 20, 25, 30, ''"
    })
    void everyRowOfTheTable(int hip, int knee, int lack, String straight, String bent, String shortMuscles) {
        assertThat(heldOnTheLeft(hip, knee, lack, straight, bent)).isEqualTo(shortMuscles);
    }

    /** Published as a plain comparison; here a value within its error of the number says nothing. */
    @Test
    void aValueAtTheNumberNamesNothing() {
        assertThat(heldOnTheLeft(0, 67, 40, "18", "18")).isEmpty();
        assertThat(heldOnTheLeft(-10, 80, 20, "10", "not-tested")).isEmpty();
    }
}
