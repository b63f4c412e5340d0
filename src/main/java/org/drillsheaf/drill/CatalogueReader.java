package org.drillsheaf.drill;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/**
 * Reads drill files into a catalogue: shape by the schema, then every name that a file uses. A drill with errors is left
 * out; the others stay.
 */
public final class CatalogueReader {
    private final DrillWords words;
    private final DrillReader drillReader;

    public CatalogueReader(DrillWords words, YamlSchema drillSchema) {
        this.words = words;
        this.drillReader = new DrillReader(drillSchema);
    }

    /**
     * @param files name of the file to its text
     * @param problems takes everything that is wrong
     */
    public Catalogue read(Map<String, String> files, Problems problems) {
        List<Drill> drills = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        new TreeMap<>(files)
                .forEach((name, text) -> readOne(name, text, problems).ifPresent(drill -> {
                    if (ids.add(drill.id())) {
                        drills.add(drill);
                    } else {
                        drill.written()
                                .nearest("/id")
                                .error(
                                        problems,
                                        "A second drill is called “" + drill.id() + "”",
                                        "Give it an id of its own, the same as its file's name");
                    }
                }));
        drills.forEach(drill -> new DrillReferences(words, ids, problems).check(drill));
        return new Catalogue(words, drills);
    }

    private Optional<Drill> readOne(String name, String text, Problems problems) {
        Problems own = new Problems();
        Optional<Drill> drill = YamlNode.parse(name, text, own).flatMap(node -> drillReader.read(node, own));
        drill.ifPresent(d -> {
            String plain = name.substring(name.lastIndexOf('/') + 1).replaceFirst("\\.ya?ml$", "");
            if (!plain.equals(d.id())) {
                d.written()
                        .nearest("/id")
                        .error(
                                own,
                                "The drill is called “" + d.id() + "” and its file “" + plain + "”",
                                "Give both the same name");
            }
        });
        problems.addAll(own.all());
        return drill;
    }
}
