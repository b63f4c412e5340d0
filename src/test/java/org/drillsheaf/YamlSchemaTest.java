package org.drillsheaf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a value cannot be, and what would be right, in words that need no schema beside them. */
class YamlSchemaTest {
    private static final YamlSchema SCHEMA = YamlSchema.of(
            """
            {"type": "object", "properties": {
              "stature": {"type": "number", "minimum": 100, "maximum": 230},
              "level": {"$ref": "#/$defs/level"},
              "share": {"type": "number", "exclusiveMinimum": 0},
              "limit": {"type": "number", "maximum": 9},
              "lax": {"type": "boolean"},
              "name": {"type": "string", "minLength": 1, "maxLength": 8},
              "paper": {"enum": ["A4", "Letter"]},
              "id": {"type": "string", "pattern": "^[a-z-]+$", "examples": ["wall-lean"]},
              "things": {"type": "array", "minItems": 1, "maxItems": 2, "uniqueItems": true},
              "side": {"type": ["object", "string"]}},
             "$defs": {"level": {"type": "integer", "minimum": 1}}}
            """);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            textBlock =
                    """
                    stature: 17O    | “stature” cannot be “17O”   | Write a number from 100 to 230
                    stature: 1.7    | “stature” cannot be “1.7”   | Write a number from 100 to 230
                    level: 0        | “level” cannot be “0”       | Write a whole number, 1 or more
                    share: 0        | “share” cannot be “0”       | Write a number, more than 0
                    limit: 10       | “limit” cannot be “10”      | Write a number, 9 at most
                    lax: maybe      | “lax” cannot be “maybe”     | Write true or false
                    name: 12        | “name” cannot be “12”       | Write a text; one that looks like a number or a date needs quotes
                    name: ''        | “name” cannot be empty      | Write something here, or leave the line out if it may be missing
                    name: longer than so | “name” cannot be “longer than so” | Write 8 signs at most
                    name: [a]       | “name” cannot be a list     | Write a text; one that looks like a number or a date needs quotes
                    name:           | “name” cannot be empty      | Write something here, or leave the line out if it may be missing
                    paper: A5       | “paper” cannot be “A5”      | Use one of: A4, Letter
                    id: Wall Lean   | “id” cannot be “Wall Lean”  | Write it like “wall-lean”
                    things: chair   | “things” cannot be “chair”  | Write a list: [one, another]
                    things: []      | “things” cannot be a list   | Write at least 1
                    things: [a, b, c] | “things” cannot be a list | Write 2 at most
                    things: [a, a]  | “things” cannot be a list   | Name each only once
                    side: 4         | “side” cannot be “4”        | Write lines of its own below it, each “name: value”, or a text; one that looks like a number or a date needs quotes
                    """)
    void itSaysWhatStandsThereAndWhatWouldBeRight(String yaml, String what, String remedy) {
        Problems problems = new Problems();
        SCHEMA.check(YamlNode.parse("client.yaml", yaml, problems).orElseThrow(), problems);

        assertThat(problems.all())
                .extracting(Problem::message)
                .containsExactly("client.yaml:1: " + what + ". " + remedy + ".");
    }

    @Test
    void aLongValueIsCut() {
        Problems problems = new Problems();
        SCHEMA.check(
                YamlNode.parse("x.yaml", "paper: " + "a".repeat(300), problems).orElseThrow(), problems);

        assertThat(problems.all())
                .extracting(Problem::what)
                .containsExactly("“paper” cannot be “" + "a".repeat(40) + "…”");
    }
}
