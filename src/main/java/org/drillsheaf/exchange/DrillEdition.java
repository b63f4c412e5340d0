package org.drillsheaf.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.library.HouseLayer;

/** How revisions are counted when drills come in: a clinic's file counts its own, and says which starter it is based on. */
final class DrillEdition {
    static final String REVISION = "revision";
    static final String BASED_ON = "based-on";
    /** What tells of an edition and not of the drill. */
    private static final List<String> OF_AN_EDITION = List.of(REVISION, BASED_ON, "author", "reviewed-on", "reason");

    private DrillEdition() {}

    /** A drill without what is counted here. */
    static JsonNode withoutBase(JsonNode drill) {
        return drill.isObject() ? without(drill, List.of(BASED_ON)) : drill;
    }

    /** What a drill says, without who wrote this edition of it and when. */
    static JsonNode content(JsonNode drill) {
        return drill.isObject() ? without(drill, OF_AN_EDITION) : drill;
    }

    private static JsonNode without(JsonNode drill, List<String> keys) {
        return ((ObjectNode) drill.deepCopy()).remove(keys);
    }

    /**
     * The revision that a drill gets.
     *
     * @param merged both sides together
     * @param isClash whether both sides counted on
     */
    static int revision(IncomingDrill incoming, Optional<HouseLayer.Laid> mine, JsonNode merged, boolean isClash) {
        JsonNode theirs = incoming.drill();
        JsonNode now = mine.<JsonNode>map(m -> m.node().json()).orElse(JsonNodeFactory.instance.missingNode());
        int written = merged.path(REVISION).asInt();
        boolean differs = !content(merged).equals(content(now));
        boolean mixed = differs && !content(merged).equals(content(theirs));
        boolean editedButNotCounted = differs
                && !incoming.ancestors().isEmpty()
                && !content(theirs).equals(content(incoming.ancestors().get(0)))
                && theirs.path(REVISION).equals(incoming.ancestors().get(0).path(REVISION));
        if (!mixed && !editedButNotCounted && !isClash) {
            return written;
        }
        boolean hasStarter = mine.flatMap(HouseLayer.Laid::starter).isPresent();
        return Math.max(ownCount(now, hasStarter), ownCount(theirs, hasStarter)) + 1;
    }

    /** A starter drill has not been counted by the clinic yet. */
    private static int ownCount(JsonNode drill, boolean hasStarter) {
        return hasStarter && !drill.has(BASED_ON) ? 0 : drill.path(REVISION).asInt();
    }

    /** The starter revision that the clinic's file is based on: the one that lies below it here. */
    static Optional<Integer> basedOn(Optional<HouseLayer.Laid> mine) {
        return mine.flatMap(
                laid -> laid.house().flatMap(house -> house.integer(BASED_ON)).or(() -> laid.starter()
                        .flatMap(starter -> starter.integer(REVISION))));
    }

    /** A drill with its revision and its base where the catalogue writes them. */
    static ObjectNode with(JsonNode drill, int revision, Optional<Integer> basedOn) {
        ObjectNode counted = JsonNodeFactory.instance.objectNode();
        drill.properties().forEach(entry -> {
            if (entry.getKey().equals(REVISION)) {
                counted.put(REVISION, revision);
                basedOn.ifPresent(base -> counted.put(BASED_ON, base));
            } else if (!entry.getKey().equals(BASED_ON)) {
                counted.set(entry.getKey(), entry.getValue());
            }
        });
        return counted;
    }

    /** A short file that withdraws a starter drill, when nothing else differs from the starter. */
    static Optional<ObjectNode> withdrawal(JsonNode drill, JsonNode starter) {
        ObjectNode inUse = ((ObjectNode) drill.deepCopy()).set("status", starter.path("status"));
        if (!drill.path("status").asText().equals("withdrawn")
                || !content(inUse).equals(content(starter))) {
            return Optional.empty();
        }
        ObjectNode file = JsonNodeFactory.instance.objectNode();
        file.set("id", drill.path("id"));
        file.put("withdrawn", true);
        for (String key : List.of(BASED_ON, REVISION, "author", "reviewed-on", "reason")) {
            file.set(key, drill.path(key));
        }
        return Optional.of(file);
    }
}
