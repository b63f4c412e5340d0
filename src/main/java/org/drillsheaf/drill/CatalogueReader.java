package org.drillsheaf.drill;

import java.util.ArrayList;
import java.util.Collection;
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
        return catalogue(parse(files, problems).values(), problems);
    }

    /**
     * The first half of reading: YAML, and a drill called like its file.
     *
     * @param files name of the file to its text
     * @return name of the drill's file without its ending to the file's content, in that order
     */
    public static Map<String, YamlNode> parse(Map<String, String> files, Problems problems) {
        Map<String, YamlNode> nodes = new TreeMap<>();
        new TreeMap<>(files)
                .forEach((name, text) -> YamlNode.parse(name, text, problems).ifPresent(node -> {
                    String plain = name.substring(name.lastIndexOf('/') + 1).replaceFirst("\\.ya?ml$", "");
                    Optional<String> id = node.text("id").filter(i -> !i.equals(plain));
                    id.ifPresent(i -> node.nearest("/id")
                            .error(
                                    problems,
                                    "The drill is called “" + i + "” and its file “" + plain + "”",
                                    "Give both the same name"));
                    if (nodes.putIfAbsent(plain, node) != null) {
                        second(node, plain, problems);
                    }
                }));
        return nodes;
    }

    /** The second half: every drill of its own, then every name that one drill uses for another. */
    public Catalogue catalogue(Collection<YamlNode> nodes, Problems problems) {
        List<Drill> drills = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (YamlNode node : nodes) {
            drillReader.read(node, problems).ifPresent(drill -> {
                if (ids.add(drill.id())) {
                    drills.add(drill);
                } else {
                    second(node, drill.id(), problems);
                }
            });
        }
        drills.forEach(drill -> new DrillReferences(words, ids, problems).check(drill));
        return new Catalogue(words, drills);
    }

    /**
     * Reads drills that are to come into a catalogue.
     *
     * @param drills ids of all drills that will be there with them
     */
    public List<Drill> among(Collection<YamlNode> nodes, Set<String> drills, Problems problems) {
        List<Drill> read = new ArrayList<>();
        nodes.forEach(node -> drillReader.read(node, problems).ifPresent(read::add));
        read.forEach(drill -> new DrillReferences(words, drills, problems).check(drill));
        return List.copyOf(read);
    }

    private static void second(YamlNode node, String id, Problems problems) {
        node.nearest("/id")
                .error(
                        problems,
                        "A second drill is called “" + id + "”",
                        "Give it an id of its own, the same as its file's name");
    }
}
