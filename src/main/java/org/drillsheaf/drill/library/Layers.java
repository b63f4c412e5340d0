package org.drillsheaf.drill.library;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.drillsheaf.YamlNode;

/**
 * The drills of the starter catalogue with the clinic's own over them, and the texts they were read from.
 *
 * @param starter name of each delivered file to its text, for example {@code exercise-library/wall-march.yaml}
 * @param house name of each file of the clinic to its text, for example {@code house/exercise-library/wall-march.yaml}
 * @param drills every drill by id
 */
public record Layers(Map<String, String> starter, Map<String, String> house, Map<String, HouseLayer.Laid> drills) {

    public Layers {
        starter = Collections.unmodifiableMap(new LinkedHashMap<>(starter));
        house = Collections.unmodifiableMap(new LinkedHashMap<>(house));
        drills = Collections.unmodifiableMap(new LinkedHashMap<>(drills));
    }

    /** How many drills have this standing. */
    public long count(HouseLayer.Standing standing) {
        return drills.values().stream().filter(d -> d.standing() == standing).count();
    }

    /** The text of a file of either layer. */
    public String text(YamlNode file) {
        String text = house.getOrDefault(file.file(), starter.get(file.file()));
        if (text == null) {
            throw new IllegalArgumentException(file.file() + " is of neither layer");
        }
        return text;
    }
}
