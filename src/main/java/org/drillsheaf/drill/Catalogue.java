package org.drillsheaf.drill;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** All drills by id, with the vocabularies they use. Immutable. */
public final class Catalogue {
    private final DrillWords words;
    private final Map<String, Drill> drills;

    public Catalogue(DrillWords words, List<Drill> drills) {
        this.words = words;
        Map<String, Drill> byId = new TreeMap<>();
        for (Drill drill : drills) {
            if (byId.put(drill.id(), drill) != null) {
                throw new IllegalArgumentException("two drills are called " + drill.id());
            }
        }
        this.drills = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
    }

    public DrillWords words() {
        return words;
    }

    /** All drills in the order of their ids, drafts and withdrawn ones too. */
    public List<Drill> drills() {
        return List.copyOf(drills.values());
    }

    /** The drills that may be offered. */
    public List<Drill> inUse() {
        return drills.values().stream()
                .filter(d -> d.status() == DrillStatus.IN_USE)
                .toList();
    }

    public Optional<Drill> drill(String id) {
        return Optional.ofNullable(drills.get(id));
    }

    /** The same catalogue with one drill added, or in the place of the one of the same id. */
    public Catalogue with(Drill drill) {
        Map<String, Drill> all = new LinkedHashMap<>(drills);
        all.put(drill.id(), drill);
        return new Catalogue(words, List.copyOf(all.values()));
    }

    /** The drills of one family from easy to hard. */
    public List<Drill> family(String family) {
        return drills.values().stream()
                .filter(d -> d.family().equals(family))
                .sorted(java.util.Comparator.comparingInt(Drill::level).thenComparing(Drill::id))
                .toList();
    }
}
