package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Objective;
import org.junit.jupiter.api.Test;

/** What is said when nothing fits. */
class ClashFinderTest {
    private final House house = House.open();
    private final ExactBuilder exact =
            new ExactBuilder(new Objective(house.vocabulary.builder().order()), ExactBuilder.USUAL_STEPS);

    @Test
    void aPinThatNeedsWhatTheClientDoesNotOwnClashesWithThatAlone() {
        ClientFile file = house.sample("odile-farrant");
        Needs needs = house.needs(file);
        Offers offers = house.builder.offers(needs);
        Offer lacking = offers.all().stream()
                .filter(o -> o.barriers().size() == 1
                        && o.barriers().get(0).kind() == Barrier.Kind.EQUIPMENT
                        && o.drill().prerequisites().isEmpty())
                .findFirst()
                .orElseThrow();
        Phase phase = lacking.drill().phases().iterator().next();
        Needs pinned = pin(needs, lacking.id(), phase);

        ClashSet clash = (ClashSet) house.builder.build(pinned, offers);

        assertThat(clash.members()).hasSize(2);
        assertThat(clash.smallest()).isTrue();
        assertThat(said(clash.members().get(0).who())).isEqualTo("You pinned");
        assertThat(said(clash.members().get(1).what())).startsWith("no ");
        assertThat(clash.members()).allMatch(m -> said(m.then()).startsWith("Then a program fits"));
        assertMinimal(pinned, offers, clash);
    }

    @Test
    void aDrillThatAConditionExcludesClashesAloneWhenItIsPinned() {
        ClientFile file = house.sample("edwin-tarrow");
        Needs needs = house.needs(file);
        Offers offers = house.builder.offers(needs);
        Offer excluded = offers.all().stream()
                .filter(o -> o.barriers().stream().anyMatch(b -> b.kind() == Barrier.Kind.SAFETY))
                .findFirst()
                .orElseThrow();
        Needs pinned =
                pin(needs, excluded.id(), excluded.drill().phases().iterator().next());

        ClashSet clash = (ClashSet) house.builder.build(pinned, offers);

        assertThat(clash.members()).hasSize(1);
        assertThat(said(clash.members().get(0).remedy())).isEqualTo("Let go of the pin");
        assertMinimal(pinned, offers, clash);
    }

    @Test
    void tooFewMinutesForThePinnedDrillsAreNamedTogetherWithThePins() {
        String yaml = House.text(java.nio.file.Path.of("samples/clients/odile-farrant.yaml"))
                .replaceFirst("minutes-per-session: \\d+", "minutes-per-session: 5");
        Needs needs = house.needs(house.client(yaml));
        Offers offers = house.builder.offers(needs);

        BuildResult result = house.builder.build(needs, offers);

        assertThat(result).isInstanceOf(ClashSet.class);
        ClashSet clash = (ClashSet) result;
        assertThat(clash.members()).anyMatch(m -> said(m.what()).equals("5 minutes a session"));
        assertMinimal(needs, offers, clash);
    }

    @Test
    void whoOwnsNothingIsToldWhatToGet() {
        Needs needs = needs("odile-farrant", "equipment: []", 20);
        Offers offers = house.builder.offers(needs);

        ClashSet clash = (ClashSet) house.builder.build(needs, offers);

        assertThat(clash.smallest()).isTrue();
        assertThat(clash.members()).allMatch(m -> said(m.who()).equals("The client owns"));
        assertThat(clash.members()).anyMatch(m -> said(m.then()).startsWith("Then a program fits"));
        assertMinimal(needs, offers, clash);
    }

    @Test
    void noClashNamesWhatItDoesNotNeed() {
        int clashes = 0;
        for (String sample : List.of("odile-farrant", "edwin-tarrow", "vera-quill")) {
            for (String owned : List.of("equipment: []", "equipment: [chair]", "equipment: [wall, pillow]")) {
                for (int minutes : new int[] {5, 20}) {
                    Needs needs = needs(sample, owned, minutes);
                    Offers offers = house.builder.offers(needs);
                    if (house.builder.build(needs, offers) instanceof ClashSet clash) {
                        clashes++;
                        assertMinimal(needs, offers, clash);
                    }
                }
            }
        }
        assertThat(clashes).isGreaterThan(5);
    }

    @Test
    void aBuilderThatMayTakeNoStepNamesNoClash() {
        Needs needs = needs("odile-farrant", "equipment: []", 20);
        Offers offers = house.builder.offers(needs);
        ExactBuilder stopped = exact.stoppedBy(() -> true);
        TaskMaker tasks = new TaskMaker(needs, offers, house.vocabulary.builder());

        assertThat(stopped.fits(tasks.task(), ExactBuilder.USUAL_STEPS)).isEmpty();
        assertThat(house.builder.stoppedBy(() -> true).build(needs, offers)).isInstanceOf(Undecided.class);
    }

    private Needs needs(String sample, String owned, int minutes) {
        String yaml = House.text(java.nio.file.Path.of("samples/clients", sample + ".yaml"))
                .replaceFirst("equipment: \\[[^\\]]*\\]", owned)
                .replaceFirst("minutes-per-session: \\d+", "minutes-per-session: " + minutes);
        return house.needs(house.client(yaml));
    }

    private static Needs pin(Needs needs, String drill, Phase phase) {
        Pin pin = new Pin(Pin.Kind.MUST_HAVE, drill, Optional.of(phase), "");
        return HouseProgramsTest.with(
                needs, new CoachWishes(List.of(), List.of(pin), List.of(), List.of(), Optional.empty()));
    }

    /** The members alone leave nothing, and without any one of them something fits. */
    private void assertMinimal(Needs needs, Offers offers, ClashSet clash) {
        List<Requirement> all = Requirement.of(needs, offers);
        TaskMaker tasks = new TaskMaker(needs, offers, house.vocabulary.builder());
        List<Requirement> members = all.stream()
                .filter(r -> clash.members().stream()
                        .anyMatch(m -> m.what().equals(r.what()) && m.who().equals(r.who())))
                .toList();
        assertThat(members).hasSameSizeAs(clash.members());
        assertThat(fits(tasks, all, members)).as("the members alone").isFalse();
        for (Requirement member : members) {
            List<Requirement> others = new ArrayList<>(members);
            others.remove(member);
            assertThat(fits(tasks, all, others)).as("without %s", member.what()).isTrue();
        }
    }

    private boolean fits(TaskMaker tasks, List<Requirement> all, List<Requirement> kept) {
        Set<Requirement> letGo = new HashSet<>(all);
        kept.forEach(letGo::remove);
        return exact.fits(tasks.task(letGo), ExactBuilder.USUAL_STEPS).orElseThrow();
    }
}
