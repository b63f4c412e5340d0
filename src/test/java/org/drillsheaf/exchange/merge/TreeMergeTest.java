package org.drillsheaf.exchange.merge;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Who changed what, when two sides worked on one drill. */
class TreeMergeTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Test
    void changesOfDifferentFieldsComeTogether() {
        TreeMerge.Result result =
                merge("{a: 1, b: {c: 2, d: 3}}", "{a: 9, b: {c: 2, d: 3}}", "{a: 1, b: {c: 2, d: 4}}");

        assertThat(result.merged()).isEqualTo(json("{a: 9, b: {c: 2, d: 4}}"));
        assertThat(result.clashes()).isEmpty();
    }

    @Test
    void theSameChangeOnBothSidesIsNoClash() {
        assertThat(merge("{a: 1}", "{a: 2}", "{a: 2}").clashes()).isEmpty();
    }

    @Test
    void aClashKeepsMineUntilSomebodyChose() {
        JsonNode base = json("{a: 1, b: 1}");
        JsonNode mine = json("{a: 2, b: 5}");
        JsonNode theirs = json("{a: 3, b: 1}");

        TreeMerge.Result open = TreeMerge.merge(List.of(base), mine, theirs, Optional.empty());

        assertThat(open.clashes()).containsExactly(new FieldChange("/a", json("2"), json("3")));
        assertThat(open.merged()).isEqualTo(mine);
        assertThat(TreeMerge.merge(List.of(base), mine, theirs, Optional.of(Take.MINE))
                        .merged())
                .isEqualTo(mine);
        assertThat(TreeMerge.merge(List.of(base), mine, theirs, Optional.of(Take.THEIRS))
                        .merged())
                .isEqualTo(json("{a: 3, b: 5}"));
    }

    @Test
    void aFieldThatOneSideRemovedGoesUnlessTheOtherChangedIt() {
        assertThat(merge("{a: 1, b: 1}", "{a: 1, b: 1}", "{a: 1}").merged()).isEqualTo(json("{a: 1}"));
        assertThat(merge("{a: 1, b: 1}", "{a: 1, b: 2}", "{a: 1}").clashes())
                .extracting(FieldChange::field)
                .containsExactly("b");
    }

    @Test
    void listsOfOneLengthMergePlaceByPlace() {
        assertThat(merge("{s: [{en: x}, {en: y}]}", "{s: [{en: X}, {en: y}]}", "{s: [{en: x}, {en: y, es: z}]}")
                        .merged())
                .isEqualTo(json("{s: [{en: X}, {en: y, es: z}]}"));
    }

    @Test
    void aListThatBothMadeLongerIsAClash() {
        assertThat(merge("{s: [1]}", "{s: [1, 2]}", "{s: [1, 3]}").clashes())
                .extracting(FieldChange::field)
                .containsExactly("s");
    }

    @Test
    void itemsWithIdsMergeByTheirIds() {
        assertThat(merge(
                                "{v: [{id: a, n: 1}, {id: b, n: 1}]}",
                                "{v: [{id: b, n: 2}]}",
                                "{v: [{id: a, n: 1}, {id: b, n: 1}, {id: c, n: 1}]}")
                        .merged())
                .isEqualTo(json("{v: [{id: b, n: 2}, {id: c, n: 1}]}"));
    }

    /** Another clinic's version of a starter drill, which was not touched here. */
    @Test
    void whatTheExporterMadeOfTheStarterComesIn() {
        JsonNode starter = json("{a: 1, b: 1, c: 1}");
        JsonNode exported = json("{a: 2, b: 1, c: 1}");

        assertThat(TreeMerge.merge(List.of(exported, starter), json("{a: 1, b: 1, c: 7}"), exported, Optional.empty()))
                .isEqualTo(new TreeMerge.Result(json("{a: 2, b: 1, c: 7}"), List.of()));
        assertThat(TreeMerge.merge(List.of(exported, starter), json("{a: 7, b: 1, c: 1}"), exported, Optional.empty())
                        .clashes())
                .as("both clinics changed it")
                .extracting(FieldChange::field)
                .containsExactly("a");
        assertThat(TreeMerge.merge(List.of(exported, starter), exported, starter, Optional.empty())
                        .merged())
                .as("edited back to the starter since the export")
                .isEqualTo(starter);
    }

    @Test
    void aDrillThatOnlyTheFileHasComesIn() {
        assertThat(TreeMerge.merge(
                                List.of(MissingNode.getInstance()),
                                MissingNode.getInstance(),
                                json("{a: 1}"),
                                Optional.empty())
                        .merged())
                .isEqualTo(json("{a: 1}"));
    }

    @Property(tries = 500)
    void oneSideAloneIsTakenAsItIs(@ForAll("drills") JsonNode base, @ForAll("drills") JsonNode changed) {
        assertThat(TreeMerge.merge(List.of(base), base, changed, Optional.empty()))
                .isEqualTo(new TreeMerge.Result(changed, List.of()));
        assertThat(TreeMerge.merge(List.of(base), changed, base, Optional.empty()))
                .isEqualTo(new TreeMerge.Result(changed, List.of()));
    }

    @Property(tries = 500)
    void bothOrdersAgreeOnWhatClashes(
            @ForAll("drills") JsonNode base, @ForAll("drills") JsonNode mine, @ForAll("drills") JsonNode theirs) {
        TreeMerge.Result here = TreeMerge.merge(List.of(base), mine, theirs, Optional.of(Take.MINE));
        TreeMerge.Result there = TreeMerge.merge(List.of(base), theirs, mine, Optional.of(Take.THEIRS));

        assertThat(here.clashes())
                .extracting(FieldChange::pointer)
                .containsExactlyInAnyOrderElementsOf(
                        there.clashes().stream().map(FieldChange::pointer).toList());
        assertThat(TreeDifference.between(here.merged(), there.merged())).isEmpty();
    }

    @Provide
    Arbitrary<JsonNode> drills() {
        Arbitrary<String> value =
                Arbitraries.of("1", "2", "\"x\"", "[1]", "[1, 2]", "[3, 2]", "{\"en\": 1}", "{\"en\": 2, \"es\": 1}");
        return Combinators.combine(value, value, value)
                .as((a, b, c) -> json("{a: " + a + ", b: " + b + ", c: " + c + "}"));
    }

    private static TreeMerge.Result merge(String base, String mine, String theirs) {
        return TreeMerge.merge(List.of(json(base)), json(mine), json(theirs), Optional.empty());
    }

    /** JSON whose plain words need no quotes. */
    private static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text.replaceAll("(?<![\"\\w])([a-zA-Z]\\w*)(?![\"\\w])", "\"$1\""));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }
}
