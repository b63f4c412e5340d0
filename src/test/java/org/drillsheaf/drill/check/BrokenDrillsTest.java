package org.drillsheaf.drill.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.SampleDrill;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.drill.safety.ProjectRules;
import org.drillsheaf.drill.safety.Safety;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each drill of {@code broken-drills.yaml} is broken in one place, and reading or checking it has to say so. */
class BrokenDrillsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String FILE = "wall-lean-breath.yaml";
    private static final List<Problem> OF_THE_WHOLE_DRILL = problems(Map.of(FILE, SampleDrill.TEXT));

    /** @param files name to text */
    record Broken(String name, Map<String, String> files, String severity, String message) {
        @Override
        public String toString() {
            return name;
        }
    }

    @ParameterizedTest
    @MethodSource("broken")
    void aDrillBrokenInOnePlaceGetsItsMessage(Broken broken) {
        List<Problem> problems = problems(broken.files());

        assertThat(problems).as(problems.toString()).anySatisfy(p -> {
            assertThat(p.severity().name()).isEqualToIgnoringCase(broken.severity());
            assertThat(p.what()).contains(broken.message());
            assertThat(p.file()).isNotEmpty();
            assertThat(p.line()).isPositive();
            assertThat(p.remedy()).isNotEmpty();
        });
        assertThat(OF_THE_WHOLE_DRILL)
                .as("the whole drill has none of it")
                .filteredOn(p -> p.severity().name().equalsIgnoreCase(broken.severity()))
                .noneMatch(p -> p.what().contains(broken.message()));
    }

    @Test
    void theSetIsLargeEnoughAndEachIsBrokenDifferently() throws IOException {
        assertThat(broken().map(Broken::name)).hasSizeGreaterThanOrEqualTo(30).doesNotHaveDuplicates();
    }

    static Stream<Broken> broken() throws IOException {
        List<Broken> all = new ArrayList<>();
        Problems problems = new Problems();
        try (InputStream in =
                Objects.requireNonNull(BrokenDrillsTest.class.getResourceAsStream("broken-drills.yaml"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            YamlNode file = YamlNode.parse("broken-drills.yaml", text, problems).orElseThrow();
            for (YamlNode node : file.nearest("/broken").items()) {
                Map<String, String> files = new TreeMap<>();
                files.put(FILE, changed(SampleDrill.TEXT, node));
                for (YamlNode other : node.get("beside").map(YamlNode::items).orElse(List.of())) {
                    String id = other.text("id").orElseThrow();
                    String own = SampleDrill.TEXT.replace("id: wall-lean-breath", "id: " + id);
                    files.put((files.containsKey(id + ".yaml") ? "more/" : "") + id + ".yaml", changed(own, other));
                }
                all.add(new Broken(
                        node.text("name").orElseThrow(),
                        files,
                        node.text("severity").orElseThrow(),
                        node.text("message").orElseThrow()));
            }
        }
        return all.stream();
    }

    private static String changed(String text, YamlNode node) {
        String changed = text;
        for (YamlNode change : node.get("change").map(YamlNode::items).orElse(List.of())) {
            String from = change.text("from").orElseThrow();
            assertThat(changed).contains(from);
            changed = changed.replace(from, change.text("to").orElseThrow());
        }
        return changed;
    }

    /** What reading and checking say; coverage is left out, which a single drill cannot have. */
    private static List<Problem> problems(Map<String, String> files) {
        DrillWords plain = SampleDrill.words();
        DrillWords words = new DrillWords(
                plain.goals(),
                plain.positions(),
                plain.equipment(),
                ProjectRules.RULES.conditions().keySet(),
                ProjectRules.RULES.kinds().keySet());
        Problems problems = new Problems();
        Catalogue catalogue = new CatalogueReader(words, SampleDrill.schema()).read(files, problems);
        List<Problem> all = new ArrayList<>(problems.all());
        DrillReader reader = new DrillReader(SampleDrill.schema());
        PoseMeasuring measuring = new PoseMeasuring();
        Safety safety = new Safety(ProjectRules.RULES, reader, measuring);
        CatalogueCheck check = new CatalogueCheck(catalogue, ProjectRules.RULES, reader, TODAY, ProjectRules.SPEECH);
        catalogue.drills().forEach(drill -> all.addAll(check.drill(drill, safety, measuring)));
        all.addAll(new LadderCheck(catalogue).check());
        all.addAll(new DuplicateCheck(catalogue).check());
        return all;
    }
}
