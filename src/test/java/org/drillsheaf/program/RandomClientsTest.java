package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.client.Client;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.program.build.RuleCheck;
import org.junit.jupiter.api.Test;

/** A thousand invented clients over the real library. */
class RandomClientsTest {
    private final House house = House.open();

    @Test
    void everyHardRuleHoldsForAThousandRandomClients() {
        List<String> samples = HouseProgramsTest.samples();
        // A cap far below the usual one: the rules must hold for what is found, whether it is proved best or not.
        ExactBuilder hasty =
                new ExactBuilder(new Objective(house.vocabulary.builder().order()), 200_000);
        List<Needs> needs =
                samples.stream().map(id -> house.needs(house.sample(id))).toList();
        List<Offers> offers = needs.stream().map(house.builder::offers).toList();
        int found = 0;
        for (int seed = 0; seed < 1_000; seed++) {
            Random random = new Random(seed);
            int which = random.nextInt(needs.size());
            Needs changed = change(needs.get(which), random);
            Offers again = offers.get(which).again(house.catalogue, changed);
            BuildTask task = new TaskMaker(changed, again, house.vocabulary.builder()).task();
            Answer answer = hasty.value(task);
            if (answer.found()) {
                found++;
                assertThat(RuleCheck.broken(task, answer.drills()))
                        .as("seed %d", seed)
                        .isEmpty();
                assertThat(HardRules.broken(changed, again, house.catalogue, answer.drills()))
                        .as("seed %d", seed)
                        .isEmpty();
                for (List<String> phase : answer.drills()) {
                    for (String id : phase) {
                        assertThat(again.offer(id).orElseThrow().isOpen())
                                .as("seed %d, %s", seed, id)
                                .isTrue();
                    }
                }
            }
        }
        assertThat(found).isGreaterThan(300);
    }

    private Needs change(Needs needs, Random random) {
        Client c = needs.client();
        Set<String> equipment = new TreeSet<>();
        for (String item : house.catalogue.words().equipment().keySet()) {
            if (random.nextInt(3) > 0) {
                equipment.add(item);
            }
        }
        Set<String> avoid = new TreeSet<>();
        for (String position : house.catalogue.words().positions().keySet()) {
            if (random.nextInt(8) == 0) {
                avoid.add(position);
            }
        }
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
                equipment,
                avoid,
                8 + random.nextInt(25),
                1 + random.nextInt(7),
                c.wish());
        List<Pin> pins = new ArrayList<>();
        List<CoachWishes.DoseWish> doses = new ArrayList<>();
        List<String> ids = house.catalogue.inUse().stream().map(d -> d.id()).toList();
        if (random.nextInt(3) == 0) {
            Pin.Kind kind = random.nextBoolean() ? Pin.Kind.MUST_HAVE : Pin.Kind.MUST_NOT_HAVE;
            pins.add(new Pin(kind, ids.get(random.nextInt(ids.size())), Optional.empty(), ""));
            doses.add(new CoachWishes.DoseWish(
                    ids.get(random.nextInt(ids.size())),
                    Optional.of(Phase.RESTORE),
                    OptionalInt.of(2),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    ""));
        }
        CoachWishes wishes = new CoachWishes(List.of(), pins, doses, List.of(), Optional.empty());
        return HouseProgramsTest.with(needs, wishes).withClient(client);
    }
}
