package org.drillsheaf.drill.safety;

import static org.assertj.core.api.Assertions.assertThat;

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

    @Test
    void disputedNumbersComeAsOneListForAClinician() {
        assertThat(ProjectRules.RULES.toConfirm())
                .anyMatch(line -> line.contains("Hip bend limit"))
                .anyMatch(line -> line.startsWith("Pregnancy: Not flat on the back from this week (now: 13"))
                .hasSizeGreaterThan(15);
    }
}
