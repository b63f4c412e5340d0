package org.drillsheaf.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClientReaderTest {
    private static final KnownIds KNOWN = new KnownIds(
            Map.of("hip-posterior", Set.of("limits-lifted"), "wrist-pain", Set.of(), "spine-surgery", Set.of()),
            Set.of("wall", "chair", "band", "bed"),
            Set.of("prone", "supine"),
            Set.of("restore-hip-extension"),
            Set.of("chest", "night-pain", "surgery"));

    private static final String FILE =
            """
            client: {id: odile-farrant, name: Odile Farrant, called: Odile, born: 1979, sex: female, stature-cm: 168, mass-kg: 62,
                     languages: [en, es], paper: Letter, print: large, coach: Tamsin Rook, equipment: [wall, chair], avoid: [prone],
                     minutes-per-session: 20, sessions-per-week: 6, wish: restore-hip-extension}
            conditions:
              - {id: hip-posterior, side: left, since: 2026-02, settings: {limits-lifted: no}}
              - {id: wrist-pain, side: both}
            visits:
              - date: 2026-04-16
                next: {date: 2026-04-23, time: "09:30"}
                safety: {chest: no, night-pain: not-sure, surgery: {answer: yes, part: hip, date: 2026-02-10}}
                screen: {toe-touch: {unit: cm, value: 4}}
                observed: {all-drills-easy: yes}
                log: {days-per-week: 5, effort: 3, new-pain: 0}
                coach: {declined: [{condition: hypermobility, reason: Measured twice.}]}
              - date: 2026-03-05
            """;

    private final Problems problems = new Problems();

    private Optional<ClientFile> read(String text) {
        try {
            String schema = Files.readString(Path.of("shared/schemas/client.schema.json"));
            return YamlNode.parse("odile.yaml", text, problems)
                    .flatMap(node -> new ClientReader(YamlSchema.of(schema), KNOWN).read(node, problems));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void everythingInTheFileIsRead() {
        ClientFile file = read(FILE).orElseThrow();

        assertThat(problems.all()).isEmpty();
        assertThat(file.client().called()).isEqualTo("Odile");
        assertThat(file.client().paper()).isEqualTo(Paper.LETTER);
        assertThat(file.client().languages()).containsExactly("en", "es");
        assertThat(file.conditions().get(0).sides()).containsExactly(Side.LEFT);
        assertThat(file.conditions().get(1).sides()).containsExactlyInAnyOrder(Side.values());
        assertThat(file.visits()).extracting(Visit::date).isSorted();
        Visit last = file.lastVisit();
        assertThat(last.safety().get("night-pain").answer()).isEqualTo(Answer.NOT_SURE);
        assertThat(last.safety().get("surgery").part()).contains("hip");
        assertThat(last.observed()).containsEntry("all-drills-easy", true);
        assertThat(last.declined()).containsEntry("hypermobility", "Measured twice.");
        assertThat(last.next()).isPresent();
    }

    @Test
    void aMonthIsCountedFromItsLastDay() {
        ClientCondition hip = read(FILE).orElseThrow().conditions().get(0);

        assertThat(hip.since()).contains(LocalDate.of(2026, 2, 28));
        assertThat(hip.weeksOn(LocalDate.of(2026, 4, 16))).isEqualTo(OptionalLong.of(6));
        assertThat(hip.says("limits-lifted")).isFalse();
    }

    @Test
    void ageIsTheDifferenceOfTheYearsUnlessTheDayIsKnown() {
        LocalDate visit = LocalDate.of(2026, 4, 16);

        assertThat(Born.in(1979).ageOn(visit)).isEqualTo(47);
        assertThat(Born.on(LocalDate.of(1979, 5, 17)).ageOn(visit)).isEqualTo(46);
    }

    /** Each change of one place gives exactly one message, on its line and with a remedy. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "born: 1979 | born: 2099 | 1 | The birth year 2099 lies in the future",
                "born: 1979 | born: 2026-04-01 | 15 | is before the client was born",
                "born: 1979 | born: 1900 | 1 | would be 126 years old",
                "born: 1979 | born: 1979-02-30 | 1 | “born” is neither a year nor a day",
                "stature-cm: 168 | stature-cm: 16.8 | 1 | stature-cm",
                "sex: female | sex: f | 1 | sex",
                "equipment: [wall, chair] | equipment: [wall, chiar] | 2 | There is no equipment “chiar”",
                "avoid: [prone] | avoid: [upside-down] | 2 | There is no body position “upside-down”",
                "wish: restore-hip-extension | wish: fly | 3 | There is no goal “fly”",
                "id: wrist-pain | id: hip-posterior | 6 | The condition hip-posterior stands twice",
                "id: wrist-pain | id: wrist-pian | 6 | There is no condition “wrist-pian”",
                "limits-lifted: no | limits: no | 5 | There is no setting of hip-posterior “limits”",
                "since: 2026-02 | since: 2026-13 | 5 | “since” is no date",
                "night-pain: not-sure | night-pian: no | 10 | There is no safety question “night-pian”",
                "night-pain: not-sure | night-pain: maybe | 10 | night-pain",
                "2026-03-05 | 2026-04-16 | 15 | There are two visits on 2026-04-16",
                "2026-03-05 | 1975-03-05 | 15 | is before the client was born",
                "2026-03-05 | 2026-02-30 | 15 | “date” is no day",
                "reason: Measured twice. | because: x | 14 | "
            })
    void whatIsWrongIsToldOnceWithItsLineAndARemedy(String from, String to, int line, String what) {
        String changed = FILE.replace(from.strip(), to.strip());
        assertThat(changed).isNotEqualTo(FILE);
        Optional<ClientFile> file = read(changed);

        assertThat(file).isEmpty();
        if (what != null) {
            assertThat(problems.all()).extracting(Problem::message).hasSize(1);
            assertThat(problems.all().get(0).what()).contains(what);
        }
        assertThat(problems.all()).allSatisfy(p -> {
            assertThat(p.line()).isEqualTo(line);
            assertThat(p.remedy()).isNotBlank();
        });
    }

    @Test
    void aNearMissNamesWhatWasMeant() {
        read(FILE.replace("[wall, chair]", "[wall, chiar]"));

        assertThat(problems.all().get(0).remedy()).isEqualTo("Write “chair” if that was meant");
    }
}
