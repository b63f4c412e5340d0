package org.drillsheaf.drill;

import java.util.List;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * A position of the body that a drill is done in.
 *
 * @param rootPostures root postures of the figure that draw it
 */
public record BodyPosition(String id, LocalText name, LocalText meaning, List<String> rootPostures, Source source) {

    public BodyPosition {
        rootPostures = List.copyOf(rootPostures);
    }
}
