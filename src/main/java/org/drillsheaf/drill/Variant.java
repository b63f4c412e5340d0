package org.drillsheaf.drill;

import org.drillsheaf.LocalText;
import org.drillsheaf.YamlNode;

/**
 * A written change of a drill.
 *
 * @param change the sentence printed for the client
 * @param changes the parts of the drill file that it lays over the drill's own
 */
public record Variant(String id, LocalText name, LocalText change, YamlNode changes) {}
