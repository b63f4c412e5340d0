package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.Reading;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A client who begins with Settle gets a whole program, over all four phases, with every condition and every common pair of
 * conditions. The questions of each condition are answered so that the program need not wait; limits stay at their strict
 * value.
 */
class ConditionProgramsTest {
    private static final House HOUSE = House.open();
    private static final SafetyRules RULES = HOUSE.vocabulary.library().safetyRules();
    private static final ClientFile FILE = HOUSE.sample("odile-farrant");
    private static final Reading READING = HOUSE.reading(FILE, 0);
    private static final List<GateResult> GATES = HOUSE.gates(FILE, 0);
    private static final LocalDate VISIT = FILE.visits().get(0).date();
    private static final Set<String> AT_HOME =
            Set.of("wall", "chair", "cushion", "pillow", "towel", "table", "counter");
    private static final Set<String> LYING_AND_KNEELING =
            Set.of("supine", "prone", "side-lying", "hands-and-knees", "tall-kneeling", "half-kneeling");

    /** Conditions that often come together: common practice, no source. Those switched on by another are told with it. */
    private static final String PAIRS =
            """
            diabetes glaucoma
            diabetes glaucoma feet-feeling
            diabetes glaucoma blood-pressure
            diabetes glaucoma heart
            after-birth leaks-heaviness
            after-birth leaks-heaviness pelvic-pain
            blood-pressure heart
            blood-pressure glaucoma
            blood-pressure osteoporosis
            blood-pressure blood-thinners
            blood-pressure dizzy-on-rising
            heart breathless
            heart blood-thinners
            osteoporosis falls
            osteoporosis no-floor
            osteoporosis blood-thinners
            osteoporosis hip-posterior
            osteoporosis spine-surgery
            steroid-tablets breathless
            pressure-tablets falls
            falls feet-feeling
            falls no-floor
            falls dizzy-on-rising
            falls blood-thinners
            falls nerve-disease
            falls vertigo
            falls narrow-canal
            no-kneel no-floor
            no-flat no-floor
            no-flat no-kneel
            no-flat no-kneel no-floor
            no-flat breathless
            no-flat reflux
            no-flat heart
            knee-bend-pain no-kneel
            knee-bend-pain no-floor
            knee-surgery no-floor
            hip-posterior hip-anterior
            hip-posterior no-floor
            hip-posterior blood-thinners
            hip-anterior no-floor
            pregnancy pelvic-pain
            pregnancy reflux
            pregnancy leaks-heaviness
            pregnancy hypermobility
            pregnancy blood-pressure
            pelvic-pain hypermobility
            pelvic-pain belly-gap
            pelvic-pain leaks-heaviness
            belly-gap leaks-heaviness
            narrow-canal blood-pressure
            narrow-canal no-floor
            spine-surgery no-floor
            spine-surgery blood-pressure
            spondylolisthesis hypermobility
            acute-leg-pain blood-pressure
            acute-leg-pain no-floor
            neck arm-raise-pain
            neck wrist-pain
            neck vertigo
            neck concussion
            wrist-pain blood-pressure
            wrist-pain no-kneel
            hypermobility shoulder-unstable
            reflux hernia
            panic breathless
            abdominal-surgery no-floor
            nerve-disease no-floor
            feet-feeling no-floor
            """;

    /** Answers that end a waiting time or tell the usual case. */
    private static final Map<String, String> ANSWERS = Map.ofEntries(
            Map.entry("floor-allowed", "yes"),
            Map.entry("approach-known", "yes"),
            Map.entry("back-rules-too", "no"),
            Map.entry("limits-written", "yes"),
            Map.entry("full-weight-allowed", "yes"),
            Map.entry("clinician-cleared", "yes"),
            Map.entry("cleared", "yes"),
            Map.entry("chest-cut-recent", "no"),
            Map.entry("device-recent", "no"),
            Map.entry("legs-give-way", "no"),
            Map.entry("consent", "yes"),
            Map.entry("clinician-checked", "yes"),
            Map.entry("swells-or-locks", "no"),
            Map.entry("reason-to-wait", "no"),
            Map.entry("cannot-walk", "no"),
            Map.entry("bulge-seen", "no"),
            Map.entry("eye-surgery-recent", "no"),
            Map.entry("fit-in-half-year", "no"),
            Map.entry("fits", "no"),
            Map.entry("stoma-or-tube", "no"),
            Map.entry("new-or-constant", "no"),
            Map.entry("caesarean", "no"),
            Map.entry("week", "24"));

    /** Conditions that are over after some weeks; all others began sixteen weeks ago. */
    private static final Map<String, Integer> WEEKS_AGO =
            Map.of("after-birth", 8, "abdominal-surgery", 8, "concussion", 3);

    private static final Map<String, BuildResult> RESULTS = new ConcurrentHashMap<>();

    @BeforeAll
    static void buildThemAll() {
        Stream.concat(RULES.conditions().keySet().stream(), pairs().stream())
                .parallel()
                .forEach(told -> RESULTS.put(told, build(told, Set.of())));
    }

    private static List<String> pairs() {
        return PAIRS.lines().toList();
    }

    /** Alone; diabetes and the time after birth switch on others whose questions they do not answer. */
    static Stream<String> conditions() {
        return RULES.conditions().keySet().stream()
                .filter(id -> !Set.of("diabetes", "after-birth").contains(id));
    }

    static Stream<String> commonPairs() {
        return pairs().stream();
    }

    @ParameterizedTest
    @MethodSource({"conditions", "commonPairs"})
    void theProgramIsWhole(String told) {
        assertThat(RESULTS.get(told)).as("%s: %s", told, RESULTS.get(told)).isInstanceOf(Program.class);
        Program program = (Program) RESULTS.get(told);
        for (Phase phase : Phase.values()) {
            assertThat(program.phase(phase).entries()).as(phase.id()).hasSizeGreaterThanOrEqualTo(3);
        }
    }

    /** What a condition leaves when the questions of those that it switches on are not answered. */
    @Test
    void questionsThatNobodyAnsweredLetTheProgramWaitWithTheReason() {
        assertThat(waitsFor("diabetes")).containsExactly("The eye doctor has to agree first.");
        assertThat(waitsFor("after-birth")).containsExactly("A bulge that can be seen is for a clinician first.");
    }

    private static List<String> waitsFor(String condition) {
        return said(((Waits) java.util.Objects.requireNonNull(RESULTS.get(condition))).reasons());
    }

    /** The whole catalogue leaves enough even here; a house that gives no breath drills in Integrate has too few. */
    @ParameterizedTest
    @ValueSource(strings = {"pelvic-pain osteoporosis falls", "pelvic-pain osteoporosis nerve-disease"})
    void whereTooLittleIsLeftTheResultIsInPersonOnlyWithTheReason(String told) {
        Catalogue fewer = new Catalogue(
                HOUSE.catalogue.words(),
                HOUSE.catalogue.drills().stream()
                        .filter(drill -> !Set.of("sit-hum", "wall-lean-breath").contains(drill.id()))
                        .toList());

        assertThat(build(told, Set.of(), HOUSE.catalogue)).isInstanceOf(Program.class);
        assertThat(build(told, Set.of(), fewer))
                .isInstanceOfSatisfying(InPersonOnly.class, result -> assertThat(said(result.reasons()))
                        .anyMatch(reason -> reason.startsWith("Integrate: only")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no-flat",
                "no-kneel",
                "no-floor",
                "no-flat no-kneel",
                "no-flat no-floor",
                "no-kneel no-floor",
                "no-flat no-kneel no-floor"
            })
    void whoCannotLieOrKneelGetsAWholeProgramInSittingAndStanding(String told) {
        Program program = (Program) build(told, LYING_AND_KNEELING);

        for (Phase phase : Phase.values()) {
            assertThat(program.phase(phase).entries())
                    .as(phase.id())
                    .hasSizeGreaterThanOrEqualTo(3)
                    .allSatisfy(entry -> assertThat(HOUSE.catalogue
                                    .drill(entry.drill())
                                    .orElseThrow()
                                    .positions())
                            .isSubsetOf("seated", "leaning", "standing", "split-stance", "walking"));
        }
    }

    private static BuildResult build(String conditions, Set<String> avoid) {
        return build(conditions, avoid, HOUSE.catalogue);
    }

    private static BuildResult build(String conditions, Set<String> avoid, Catalogue catalogue) {
        List<ClientCondition> told = Stream.of(conditions.split(" "))
                .map(ConditionProgramsTest::told)
                .toList();
        ClientSafety safety = ClientSafety.of(RULES, told, VISIT, READING.age(), Set.of("down-to-floor", "balance"));
        Client c = FILE.client();
        Client client = new Client(
                c.id(),
                c.name(),
                c.called(),
                c.born(),
                c.sex(),
                c.statureCentimetres(),
                c.massKilograms(),
                c.languages(),
                c.paper(),
                c.print(),
                c.coach(),
                AT_HOME,
                avoid,
                c.minutesPerSession(),
                c.sessionsPerWeek(),
                c.wish());
        BuilderSettings settings = HOUSE.vocabulary.builder();
        BuilderSettings withoutAlternatives = new BuilderSettings(
                settings.order(),
                settings.carriedOver(),
                settings.mostSteps(),
                0,
                settings.leastDosePercent(),
                settings.doseBounds(),
                settings.moderate());
        return new Builder(catalogue, HOUSE.safety, HOUSE.vocabulary.phases(), withoutAlternatives)
                .build(HOUSE.needsMaker.first(client, READING, safety, CoachWishes.NONE, GATES));
    }

    private static ClientCondition told(String id) {
        Map<String, String> answered = new LinkedHashMap<>(ANSWERS);
        answered.keySet().retainAll(RULES.conditions().get(id).settings().keySet());
        return new ClientCondition(
                id,
                Set.of(Side.RIGHT),
                Optional.of(VISIT.minusWeeks(WEEKS_AGO.getOrDefault(id, 16))),
                answered,
                Optional.empty(),
                Set.of(),
                0);
    }
}
