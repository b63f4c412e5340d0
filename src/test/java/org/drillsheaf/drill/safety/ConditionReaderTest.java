package org.drillsheaf.drill.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.junit.jupiter.api.Test;

class ConditionReaderTest {
    @Test
    void theProjectsConditionsAreReadWithoutAProblem() {
        assertThat(ProjectRules.RULES.conditions())
                .containsKeys("hip-posterior", "hip-anterior", "pregnancy", "osteoporosis", "under-18", "diabetes")
                .hasSize(43);
    }

    @Test
    void everyConditionThatSpeaksToClientsSpeaksEnglishAndSpanish() {
        assertThat(ProjectRules.RULES.conditions().values()).allSatisfy(c -> {
            assertThat(c.name().has("en") && c.name().has("es")).as(c.id()).isTrue();
            c.clientText().ifPresent(t -> assertThat(t.has("es")).as(c.id()).isTrue());
            c.rules().forEach(r -> r.text()
                    .ifPresent(t -> assertThat(t.has("es")).as(c.id()).isTrue()));
        });
    }

    @Test
    void clientTextsNeverSayDegreesOrRightAngle() {
        assertThat(ProjectRules.RULES.conditions().values()).allSatisfy(c -> c.clientText()
                .ifPresent(t -> assertThat(t.english().toLowerCase(java.util.Locale.ROOT))
                        .as(c.id())
                        .doesNotContain("degree", "right angle", "°")));
    }

    /** Each mark in the file is one line, and nothing else is but the house's two rules by age and the one by number. */
    @Test
    void everyLimitMarkedDisputedHouseOrMemoryComesInOneListForAClinician() throws IOException {
        List<LimitToConfirm> limits = LimitToConfirm.of(ProjectRules.RULES);

        String text = Files.readString(Path.of("shared/conditions.yaml"));
        YamlNode file = YamlNode.parse("conditions.yaml", text, new Problems()).orElseThrow();
        long marked = file.nearest("/conditions").items().stream()
                .flatMap(c ->
                        Stream.concat(Stream.of(c), c.get("settings").map(YamlNode::items).orElse(List.of()).stream()))
                .filter(ConditionReaderTest::isMarked)
                .count();
        assertThat(marked).isGreaterThan(50);
        assertThat(limits).hasSize((int) marked + 3);
        assertThat(limits)
                .anySatisfy(limit -> {
                    assertThat(limit.what()).isEqualTo("Hip bend limit in degrees");
                    assertThat(limit.strict()).isEqualTo("80");
                })
                .anySatisfy(limit -> {
                    assertThat(limit.condition()).isEqualTo("Leg pain from a disc, recent");
                    assertThat(limit.strict()).startsWith("not offered: ").contains("hip-flexion > 90");
                });
    }

    private static boolean isMarked(YamlNode node) {
        String kind = node.nearest("/source/kind").text().orElse("");
        return node.truth("disputed").orElse(false) || kind.equals("house") || kind.equals("memory");
    }
}
