package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.DoseRange;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.junit.jupiter.api.Test;

/** How hard a drill is asked for. */
class DoseChoiceTest {
    private final House house = House.open();

    /** Common practice, no source: moderate hamstring work once the back has settled. */
    @Test
    void strongHamstringDrillsAreDosedAtEffortFourToFiveInRestore() {
        Needs needs = house.needs(house.sample("odile-farrant"));
        List<Drill> strong = house.catalogue.inUse().stream()
                .filter(d ->
                        d.strength("hamstring-and-pelvis") == 3 && d.phases().contains(Phase.RESTORE))
                .toList();

        assertThat(strong).hasSizeGreaterThan(3).allSatisfy(drill -> assertThat(
                        DoseChoice.of(drill, Phase.RESTORE, needs, house.vocabulary.builder(), Optional.empty())
                                .orElseThrow()
                                .effort())
                .as(drill.id())
                .isBetween(4, 5));
    }

    /** A version with less effort, as a condition asks for, is not brought back up. */
    @Test
    void aSmallerRangeOfEffortIsKept() {
        Needs needs = house.needs(house.sample("odile-farrant"));
        Drill drill = house.catalogue.drill("wall-heels-drag").orElseThrow();
        Drill lighter = drill.with(withEffort(drill.dose(), DoseRange.fixed(3)), drill.breathing());

        assertThat(DoseChoice.of(lighter, Phase.RESTORE, needs, house.vocabulary.builder(), Optional.empty()))
                .hasValueSatisfying(choice -> assertThat(choice.effort()).isEqualTo(3));
    }

    private static Dose withEffort(Dose dose, DoseRange effort) {
        return new Dose(
                dose.count(),
                dose.noun(),
                dose.sets(),
                dose.each(),
                dose.repetitionSeconds(),
                dose.holdSeconds(),
                effort,
                dose.sides());
    }
}
