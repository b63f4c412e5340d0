package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.library.LibraryFiles;
import org.junit.jupiter.api.Test;

/** What a reading forbids: what a drill's own pose answers keeps the drill out, and of the rest the coach is reminded. */
class RestrictionsTest {
    private static final House HOUSE = House.open();
    private static final String START = "      thigh-drop:";

    private static final String SWAYED =
            """
            thigh-drop: {unit: deg, left: -9, right: -8}
            hip-extension: {unit: deg, left: 2, right: 3}
            straight-leg-raise: {unit: deg, left: 70, right: 72}
            back-rib-expansion: {unit: cm, value: 0.5}
            breath-out: {unit: s, value: 3}
            sway-back-stance: {unit: cm, hip: 9, shoulder: 5}
            joint-laxity: {unit: points, value: 0}
            """;
    private static final String UPRIGHT =
            SWAYED.replace("hip: 9, shoulder: 5", "hip: 1, shoulder: 0").replace("value: 0}", "value: 1}");
    private static final String LAX_GIVE =
            """
            thigh-drop: {unit: deg, left: -9, right: -11}
            hip-extension: {unit: deg, left: 0, right: 2}
            straight-leg-raise: {unit: deg, left: 104, right: 106}
            squat-depth: {unit: deg, value: 0, tucks: yes}
            toe-touch: {unit: cm, value: -20}
            infrasternal-angle: {unit: deg, value: 110}
            back-rib-expansion: {unit: cm, value: 0.7}
            breath-out: {unit: s, value: 3}
            sway-back-stance: {unit: cm, hip: 1, shoulder: 0}
            joint-laxity: {unit: points, value: 8}
            """;

    private static Needs needs(String screen) {
        String yaml = House.text(Path.of("samples/clients/odile-farrant.yaml"));
        return HOUSE.needs(HOUSE.client(yaml.substring(0, yaml.indexOf(START)) + screen.indent(6)));
    }

    /** A real standing drill, its back arched by so many degrees. */
    private static Drill standing(int archedDegrees) {
        String yaml = House.text(Path.of("exercise-library/counter-breath.yaml"))
                .replace("id: counter-breath", "id: lean-away")
                .replace("equipment: [counter]", "equipment: []")
                .replace("spine: {lumbar: 4, thoracic: 8}", "spine: {lumbar: " + -archedDegrees + "}");
        Problems problems = new Problems();
        Optional<Drill> drill = YamlNode.parse("lean-away.yaml", yaml, problems)
                .flatMap(node -> LibraryFiles.drillReader(Path.of(""), problems)
                        .orElseThrow()
                        .read(node, problems));
        return drill.orElseThrow(() -> new AssertionError(House.messages(problems)));
    }

    private static List<String> barriers(Drill drill, Needs needs) {
        Catalogue only = new Catalogue(HOUSE.catalogue.words(), List.of(drill));
        return Offers.of(only, HOUSE.safety, needs).offer(drill.id()).orElseThrow().barriers().stream()
                .filter(b -> b.kind() == Barrier.Kind.RESTRICTION)
                .map(b -> said(b.words()))
                .toList();
    }

    @Test
    void whoStandsSwayedGetsNoStandingDrillThatLeansTheTrunkBack() {
        Needs swayed = needs(SWAYED);
        Needs upright = needs(UPRIGHT);

        assertThat(swayed.reading().hasRestriction("no-backward-lean-standing")).isTrue();
        assertThat(upright.reading().hasRestriction("no-backward-lean-standing"))
                .isFalse();
        assertThat(barriers(standing(12), swayed)).containsExactly("it leans the trunk back in standing");
        assertThat(barriers(standing(12), upright)).isEmpty();
        assertThat(barriers(standing(4), swayed))
                .as("as upright as a drawn spine is")
                .isEmpty();
    }

    @Test
    void aDrillThatLeansBackIsInNoProgramOfAClientWhoStandsSwayed() {
        Drill leaning = standing(12);
        Builder builder = new Builder(
                HOUSE.catalogue.with(leaning), HOUSE.safety, HOUSE.vocabulary.phases(), HOUSE.vocabulary.builder());
        Needs swayed = needs(SWAYED);

        Program program = (Program) builder.build(swayed);

        assertThat(program.phases()).allSatisfy(phase -> assertThat(phase.entries())
                .noneMatch(entry -> entry.drill().equals(leaning.id())));
        assertThat(said(builder.explainer(swayed, builder.offers(swayed), program)
                        .whyNot(leaning.id())
                        .reasons()))
                .containsExactly("it leans the trunk back in standing");
    }

    @Test
    void whatNoMeasureAnswersIsALineForTheCoach() {
        String heels = "in standing the heels stay loaded and the front of the hips is never used as a stop";
        String range = "joint angles at most 85 % of the client's own measured range";

        assertThat(reminders(needs(SWAYED))).contains(heels).doesNotContain("slow returns");
        assertThat(reminders(needs(UPRIGHT))).doesNotContain(heels, "slow returns");
        assertThat(reminders(needs(LAX_GIVE))).contains(range, "slow returns").doesNotContain(heels);
        Program program = (Program) HOUSE.builder.build(needs(SWAYED));
        assertThat(said(program.remarks())).anyMatch(remark -> remark.contains("the heels stay loaded"));
    }

    private static List<String> reminders(Needs needs) {
        String start = "Look at each drill yourself, the builder cannot: ";
        return said(needs.remarks()).stream()
                .filter(remark -> remark.startsWith(start))
                .map(remark -> remark.substring(start.length(), remark.length() - 1))
                .toList();
    }
}
