package org.drillsheaf.program;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.drillsheaf.drill.Catalogue;

/** The hashes of a catalogue's drills, each worked out when it is first asked for. Safe for several threads. */
final class DrillHashes {
    private final Catalogue catalogue;
    private final Map<String, String> known = new ConcurrentHashMap<>();

    DrillHashes(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** See {@link DrillHash}. */
    String of(String drill) {
        return known.computeIfAbsent(
                drill, id -> DrillHash.of(catalogue.drill(id).orElseThrow()));
    }
}
