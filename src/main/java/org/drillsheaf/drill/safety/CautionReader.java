package org.drillsheaf.drill.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.Problems;
import org.drillsheaf.Source;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/** Reads the sentences that handouts print about practising at home. */
public final class CautionReader {
    private static final Source HOUSE = new Source(Source.Kind.COMMON_PRACTICE, "House wording of common practice.");

    private CautionReader() {}

    /**
     * Reads the sentences in the order of the file.
     *
     * @param equipment ids that {@code uses} may name
     * @param conditions ids that {@code conditions} may name
     * @return nothing when anything is wrong: a handout without its cautions is worse than none
     */
    public static List<Caution> read(
            YamlNode file, YamlSchema schema, Set<String> equipment, Set<String> conditions, Problems problems) {
        Problems own = new Problems();
        schema.check(file, own);
        List<Caution> all = new ArrayList<>();
        if (!own.hasErrors()) {
            Set<String> ids = new TreeSet<>();
            for (YamlNode node : file.nearest("/cautions").items()) {
                Caution caution = caution(node);
                if (!ids.add(caution.id())) {
                    node.error(own, "“" + caution.id() + "” stands here a second time", "Keep one of the two");
                }
                expect(node, "uses", equipment, own);
                expect(node, "conditions", conditions, own);
                all.add(caution);
            }
        }
        problems.addAll(own.all());
        return own.hasErrors() ? List.of() : List.copyOf(all);
    }

    private static Caution caution(YamlNode node) {
        return new Caution(
                node.text("id").orElseThrow(),
                node.text("group").flatMap(Caution.Group::of).orElseThrow(),
                node.localText("text").orElseThrow(),
                Set.copyOf(node.texts("uses")),
                Set.copyOf(node.texts("conditions")),
                node.get("source")
                        .map(s -> new Source(
                                s.text("kind").flatMap(Source.Kind::of).orElseThrow(),
                                s.text("text").orElseThrow()))
                        .orElse(HOUSE));
    }

    private static void expect(YamlNode node, String key, Set<String> known, Problems problems) {
        node.get(key).ifPresent(list -> list.items().stream()
                .filter(item -> !known.contains(item.text().orElse("")))
                .forEach(item -> item.error(
                        problems, "There is no “" + item.text().orElse("") + "”", "Use an id of the vocabulary")));
    }
}
