package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.program.build.RuleCheck;
import org.drillsheaf.program.build.Valuation;
import org.junit.jupiter.api.Test;

/**
 * Over the real library: more minutes, one thing more or one condition fewer never lower the weighted coverage of the same goals,
 * the first level of the objective, since a client who can have more can have what they had before. Only who loses a condition may
 * have to climb a rung that was skipped, or to do the whole of what was cut down for it; then the old program does not fit.
 */
class BetterMeansTest {
    private static final House HOUSE = House.open();
    private static final SafetyRules RULES = HOUSE.vocabulary.library().safetyRules();
    private static final BuilderSettings SETTINGS = HOUSE.vocabulary.builder();
    private static final ExactBuilder EXACT = new ExactBuilder(new Objective(SETTINGS.order()), 500_000);
    private static final int TRIES = 20;
    private static final List<Needs> SAMPLES = HouseProgramsTest.samples().stream()
            .map(id -> HOUSE.needs(HOUSE.sample(id)))
            .toList();
    private static final List<Offers> OFFERS =
            SAMPLES.stream().map(HOUSE.builder::offers).toList();

    private int proved;

    @Test
    void fiveMoreMinutes() {
        for (int seed = 0; seed < TRIES; seed++) {
            Needs needs = client(new Random(seed));
            Client client = needs.client();
            Offers offers = offers(needs);
            Needs longer = needs.withClient(client.with(client.equipment(), client.minutesPerSession() + 5));

            assertThat(broken(needs, offers, longer, offers))
                    .as("seed %d", seed)
                    .isEmpty();
        }
        assertThat(proved).isGreaterThan(8);
    }

    @Test
    void oneThingMore() {
        for (int seed = 100; seed < 100 + TRIES; seed++) {
            Random random = new Random(seed);
            Needs needs = client(random);
            Client client = needs.client();
            Offers offers = offers(needs);
            List<String> missing = HOUSE.catalogue.words().equipment().keySet().stream()
                    .filter(item -> !client.equipment().contains(item))
                    .sorted()
                    .toList();
            if (missing.isEmpty()) {
                continue;
            }
            Set<String> more = new HashSet<>(client.equipment());
            more.add(missing.get(random.nextInt(missing.size())));
            Needs richer = needs.withClient(client.with(more, client.minutesPerSession()));

            assertThat(broken(needs, offers, richer, offers.again(HOUSE.catalogue, richer)))
                    .as("seed %d", seed)
                    .isEmpty();
        }
        assertThat(proved).isGreaterThan(8);
    }

    @Test
    void oneConditionFewer() {
        for (int seed = 200; seed < 200 + TRIES / 3; seed++) {
            Random random = new Random(seed);
            Needs sample = client(random);
            List<String> ids = new ArrayList<>(RULES.conditions().keySet());
            Collections.sort(ids);
            List<ClientCondition> told = new ArrayList<>();
            for (int i = 0; i < 2 + random.nextInt(2); i++) {
                told.add(ClientCondition.of(ids.remove(random.nextInt(ids.size()))));
            }
            Needs healthier = with(sample, told.subList(1, told.size()));
            Needs needs = with(sample, told);

            List<String> broken =
                    broken(needs, HOUSE.builder.offers(needs), healthier, HOUSE.builder.offers(healthier));
            assertThat(broken)
                    .as("seed %d, without %s", seed, told.get(0).id())
                    .allMatch(rule -> rule.endsWith("comes before the rung below it") || rule.contains("minutes"));
        }
        assertThat(proved).isGreaterThan(2);
    }

    /**
     * What the poorer client's program breaks for the richer one; if nothing, then theirs covers as much, or at least no bound of
     * their search lies above it.
     */
    private List<String> broken(Needs poorer, Offers less, Needs richer, Offers more) {
        BuildTask before = new TaskMaker(poorer, less, SETTINGS).task();
        BuildTask after = new TaskMaker(richer, more, SETTINGS).task();
        Answer had = EXACT.value(before);
        if (!had.found()) {
            return List.of();
        }
        List<String> broken = RuleCheck.broken(after, had.drills());
        if (broken.isEmpty()) {
            Answer has = EXACT.value(after);
            assertThat(has.kind()).isNotEqualTo(Answer.Kind.NOTHING_FITS);
            assertThat(coverage(has.bound())).isLessThanOrEqualTo(coverage(had.value()));
            if (has.kind() == Answer.Kind.BEST) {
                proved++;
                assertThat(coverage(has.value())).isLessThanOrEqualTo(coverage(had.value()));
            }
        }
        return broken;
    }

    /** Weighted coverage that is missing. */
    private static int coverage(long packed) {
        return Valuation.unpacked(packed, EXACT.objective()).coverage();
    }

    /** As the sample may have them, with the client's own things. */
    private static Offers offers(Needs needs) {
        for (int i = 0; i < SAMPLES.size(); i++) {
            if (SAMPLES.get(i).client().id().equals(needs.client().id())) {
                return OFFERS.get(i).again(HOUSE.catalogue, needs);
            }
        }
        throw new IllegalArgumentException(needs.client().id());
    }

    /** A sample with things, positions and minutes of their own. */
    private static Needs client(Random random) {
        Needs needs = SAMPLES.get(random.nextInt(SAMPLES.size()));
        Set<String> equipment = new TreeSet<>(needs.client().equipment());
        for (String item : new TreeSet<>(HOUSE.catalogue.words().equipment().keySet())) {
            if (random.nextInt(3) == 0) {
                equipment.add(item);
            }
        }
        Client client = needs.client().with(equipment, 8 + random.nextInt(15));
        Phase start =
                random.nextInt(8) == 0 ? needs.start() : Phase.REFERENCE; // two phases are proved sooner than four
        return with(needs, client, start, needs.safety());
    }

    /** The same goals for other conditions: those that a condition bars would ask for less, not cover more. */
    private static Needs with(Needs needs, List<ClientCondition> told) {
        Set<String> seen = Set.of("down-to-floor", "balance");
        return with(
                needs,
                needs.client(),
                needs.start(),
                ClientSafety.of(RULES, told, needs.date(), needs.reading().age(), seen));
    }

    private static Needs with(Needs needs, Client client, Phase start, ClientSafety safety) {
        return new Needs(
                client,
                needs.date(),
                needs.reading(),
                start,
                needs.startReasons(),
                needs.phases(),
                needs.side(),
                needs.changes(),
                needs.effortCap(),
                safety,
                needs.wishes(),
                needs.carriedOver(),
                needs.before(),
                needs.remarks());
    }
}
