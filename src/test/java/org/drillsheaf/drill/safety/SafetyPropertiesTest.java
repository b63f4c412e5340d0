package org.drillsheaf.drill.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.drillsheaf.Side;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.SampleDrill;

/** What must hold for every condition of the file and any drill. */
class SafetyPropertiesTest {
    private static final LocalDate VISIT = LocalDate.of(2026, 11, 25);
    private static final List<String> CONDITIONS =
            List.copyOf(ProjectRules.RULES.conditions().keySet());
    private static final Drill DRILL = SampleDrill.drill();

    @Property(tries = 600, shrinking = ShrinkingMode.BOUNDED)
    void raisingAnyMeasureNeverMakesAnActionMilder(
            @ForAll("facts") Facts facts,
            @ForAll("conditions") List<String> conditions,
            @ForAll Measure measure,
            @ForAll("rises") double by) {
        ClientSafety client = client(conditions);
        Facts raised = measure.kind() == Measure.Kind.TRUTH
                ? facts.with(measure, Truth.YES)
                : facts.with(measure, facts.number(measure).orElse(0) + by);
        if (measure == Measure.LEVEL) {
            return;
        }

        assertThat(judge(raised, client))
                .as("%s raised, %s", measure, conditions)
                .isGreaterThanOrEqualTo(judge(facts, client));
    }

    @Property(tries = 400, shrinking = ShrinkingMode.BOUNDED)
    void oneMoreConditionNeverMakesAnActionMilder(
            @ForAll("facts") Facts facts, @ForAll("conditions") List<String> conditions, @ForAll("one") String more) {
        List<String> all = Stream.concat(conditions.stream(), Stream.of(more)).toList();

        assertThat(judge(facts, client(all))).isGreaterThanOrEqualTo(judge(facts, client(conditions)));
    }

    @Property(tries = 400, shrinking = ShrinkingMode.BOUNDED)
    void aSettingThatNobodyAnsweredNeverOffersMoreThanAnyAnswer(
            @ForAll("facts") Facts facts, @ForAll("one") String condition, @ForAll Random random) {
        Condition definition = ProjectRules.RULES.condition(condition).orElseThrow();
        Map<String, String> answers = new TreeMap<>();
        definition.settings().values().forEach(s -> answers.put(s.id(), answer(s, random)));
        for (SettingDefinition setting : definition.settings().values()) {
            // A number may be set either way; its cautious value is tested where it matters.
            if (setting.kind() != SettingDefinition.Kind.NUMBER) {
                Map<String, String> silent = new TreeMap<>(answers);
                silent.remove(setting.id());

                assertThat(strictness(facts, client(told(condition, silent))))
                        .as("%s without %s of %s", condition, setting.id(), answers)
                        .isGreaterThanOrEqualTo(strictness(facts, client(told(condition, answers))));
            }
        }
    }

    private static String answer(SettingDefinition setting, Random random) {
        List<String> words =
                switch (setting.kind()) {
                    case YES_NO -> List.of("yes", "no");
                    case CHOICE -> setting.words();
                    case NUMBER -> List.of(setting.cautious());
                };
        return words.get(random.nextInt(words.size()));
    }

    /** Waiting is stricter than excluding one drill. */
    private static int strictness(Facts facts, ClientSafety client) {
        return client.waits().isEmpty() ? judge(facts, client).ordinal() : Action.values().length;
    }

    @Property(tries = 200)
    void withoutConditionsEveryDrillIsAllowed(@ForAll("facts") Facts facts) {
        assertThat(judge(facts, client(List.of()))).isEqualTo(Action.ALLOWED);
    }

    @Property(tries = 400, shrinking = ShrinkingMode.BOUNDED)
    void nothingThatIsOfferedBreaksARuleOfThePosteriorHip(@ForAll("facts") Facts facts) {
        Judgement judgement = SafetyTest.safety(d -> facts).judge(DRILL, client(List.of("hip-posterior")));

        if (judgement.isOffered()) {
            assertThat(facts.number(Measure.HIP_FLEXION).orElseThrow()).isLessThanOrEqualTo(80.001);
            assertThat(facts.number(Measure.HIP_IN).orElseThrow()).isLessThanOrEqualTo(0.001);
            assertThat(facts.truth(Measure.HIP_ACROSS)).isEqualTo(Truth.NO);
        }
    }

    private static Action judge(Facts facts, ClientSafety client) {
        return SafetyTest.safety(d -> facts).judge(DRILL, client).action();
    }

    private static ClientSafety client(List<String> conditions) {
        return ClientSafety.of(
                ProjectRules.RULES,
                conditions.stream().map(c -> told(c, Map.of())).toList(),
                VISIT,
                50,
                Set.of("down-to-floor"));
    }

    private static ClientSafety client(ClientCondition condition) {
        return ClientSafety.of(ProjectRules.RULES, List.of(condition), VISIT, 50, Set.of("down-to-floor"));
    }

    private static ClientCondition told(String id, Map<String, String> settings) {
        return new ClientCondition(
                id, Set.of(Side.LEFT), Optional.of(VISIT.minusWeeks(8)), settings, Optional.empty(), Set.of(), 0);
    }

    @Provide
    Arbitrary<List<String>> conditions() {
        return Arbitraries.of(CONDITIONS).list().uniqueElements().ofMinSize(1).ofMaxSize(3);
    }

    @Provide
    Arbitrary<String> one() {
        return Arbitraries.of(CONDITIONS);
    }

    @Provide
    Arbitrary<Double> rises() {
        return Arbitraries.of(0.5, 1.0, 3.0, 10.0, 30.0, 90.0);
    }

    /** Mostly harmless facts with a few measures raised, so that not everything is excluded. */
    @Provide
    Arbitrary<Facts> facts() {
        Arbitrary<Map<Measure, Integer>> raised = Arbitraries.maps(
                        Arbitraries.of(Measure.values()), Arbitraries.of(0, 1, 2, 3, 4, 5, 15, 40, 81, 125))
                .ofMaxSize(4);
        Arbitrary<Set<String>> labels = Arbitraries.of(
                        "position:seated", "position:supine", "position:walking", "uses:band", "kind:squeeze")
                .set()
                .ofMaxSize(2);
        return raised.flatMap(r -> labels.map(l -> facts(r, l)));
    }

    private static Facts facts(Map<Measure, Integer> raised, Set<String> labels) {
        Facts facts = SafetyTest.harmless();
        for (Map.Entry<Measure, Integer> entry : raised.entrySet()) {
            facts = entry.getKey().kind() == Measure.Kind.TRUTH
                    ? facts.with(entry.getKey(), Truth.values()[entry.getValue() % 3])
                    : facts.with(entry.getKey(), entry.getValue());
        }
        return new Facts(facts.numbers(), facts.truths(), labels);
    }
}
