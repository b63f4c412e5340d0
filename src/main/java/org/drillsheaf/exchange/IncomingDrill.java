package org.drillsheaf.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.YamlNode;

/**
 * One drill of a file that comes in.
 *
 * @param ancestors what it was before: as it was exported, and the starter drill below it where that is another
 * @param drill as it comes in
 * @param text the file it was written in, if it was one
 */
public record IncomingDrill(String id, List<JsonNode> ancestors, JsonNode drill, Optional<String> text, Origin origin) {

    public IncomingDrill {
        ancestors = List.copyOf(ancestors);
    }

    /** What became of this drill, with the places of this one's file. */
    YamlNode placed(JsonNode result) {
        return YamlNode.of(origin.name(), result, origin::line);
    }
}
