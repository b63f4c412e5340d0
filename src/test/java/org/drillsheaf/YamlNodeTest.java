package org.drillsheaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class YamlNodeTest {
    private final Problems problems = new Problems();

    @Test
    void everyNodeKnowsItsLineAndPlace() {
        YamlNode root = read("client:\n  name: Odile\n  languages: [en, es]\n");

        assertThat(root.nearest("/client/name").line()).isEqualTo(2);
        assertThat(root.nearest("/client/languages/1").text()).contains("es");
        assertThat(root.nearest("/client/languages/7").path()).isEqualTo("/client/languages");
    }

    @Test
    void yesAndNoAreWordsThatCanBeReadAsTruth() {
        YamlNode root = read("a: yes\nb: no\nc: true\nd: not-sure\n");

        assertThat(root.truth("a")).contains(true);
        assertThat(root.truth("b")).contains(false);
        assertThat(root.truth("c")).contains(true);
        assertThat(root.truth("d")).isEmpty();
    }

    @Test
    void anErrorInAnotherFileDoesNotSpoilThisOne() {
        problems.error("other.yaml", 3, "Something is wrong", "Mend it");

        assertThat(YamlNode.parse("x.yaml", "a: 1\n", problems)).isPresent();
        assertThat(problems.all()).hasSize(1);
    }

    @Test
    void brokenYamlIsToldWithItsLine() {
        assertThat(YamlNode.parse("x.yaml", "a: 1\nb: [1, 2\nc: 3\n", problems)).isEmpty();

        Problem problem = problems.all().get(0);
        assertThat(problem.line()).isBetween(2, 4);
        assertThat(problem.what()).startsWith("This is not valid YAML");
    }

    @Test
    void aKeyThatStandsTwiceIsRefused() {
        assertThat(YamlNode.parse("x.yaml", "a: 1\nb: 2\na: 3\n", problems)).isEmpty();

        assertThat(problems.all()).hasSize(1);
        assertThat(problems.all().get(0).line()).isEqualTo(3);
    }

    @Test
    void aFiveMegabyteTextIsRefusedOnItsLine() {
        assertThat(YamlNode.parse("x.yaml", "a: 1\nnote: " + "x".repeat(5_000_000) + "\n", problems))
                .isEmpty();

        assertThat(problems.all()).extracting(Problem::line).containsExactly(2);
        assertThat(problems.all().get(0).message()).hasSizeLessThan(200);
    }

    @Test
    void aliasBombsAndDeepNestsAreRefused() {
        String bomb = "a: &a [x,x]\nb: &b [*a,*a]\nc: [*b,*b]\n";
        String deep = "[".repeat(500) + "]".repeat(500);

        for (String text : List.of(bomb, deep)) {
            Problems found = new Problems();
            boolean refused = YamlNode.parse("x.yaml", text, found).isEmpty();
            assertThat(refused).as(text.substring(0, 10)).isTrue();
            assertThat(found.all()).isNotEmpty();
        }
    }

    @Test
    void numbersMustBeFinite() {
        YamlNode root = read("a: .nan\nb: .inf\nc: 2.5\nd: 99999999999\n");

        assertThat(root.number("a")).isEmpty();
        assertThat(root.number("b")).isEmpty();
        assertThat(root.number("c")).contains(2.5);
        assertThat(root.integer("d")).isEmpty();
    }

    @Test
    void schemaErrorsNameTheLine() {
        YamlSchema schema = YamlSchema.of(
                """
                {"type": "object", "required": ["id"], "additionalProperties": false,
                 "properties": {"id": {"type": "string"}, "level": {"type": "integer", "maximum": 5}}}
                """);
        schema.check(read("level: 9\nlevle: 1\n"), problems);

        assertThat(problems.all()).extracting(Problem::line).containsExactlyInAnyOrder(1, 1, 2);
        assertThat(problems.all()).anyMatch(p -> p.what().contains("“levle” is not known here"));
        assertThat(problems.all()).anyMatch(p -> p.what().contains("“id” is missing"));
        assertThat(problems.all()).anyMatch(p -> p.what().contains("“level” cannot be “9”"));
    }

    @Test
    void oneNodeLaidOverAnotherMergesMapsAndReplacesLists() {
        YamlNode base = read("joints:\n  hip: {flex: 20, abd: 4}\n  knee: {flex: 26}\nsolve: [a, b]\n");
        YamlNode merged = base.with(read("\n\njoints:\n  hip: {flex: 45}\nsolve: [c]\n"));

        assertThat(merged.nearest("/joints/hip/flex").number()).contains(45.0);
        assertThat(merged.nearest("/joints/hip/flex").line()).isEqualTo(4);
        assertThat(merged.nearest("/joints/hip/abd").number()).contains(4.0);
        assertThat(merged.nearest("/joints/knee/flex").line()).isEqualTo(3);
        assertThat(merged.texts("solve")).containsExactly("c");
        assertThat(merged.without("solve").keys()).containsExactly("joints");
    }

    private YamlNode read(String text) {
        YamlNode node = YamlNode.parse("x.yaml", text, problems).orElseThrow();
        assertThat(problems.all()).isEmpty();
        return node;
    }
}
