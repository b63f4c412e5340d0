package org.drillsheaf.drill;

import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * What a drill can be for.
 *
 * @param name plain name for the coach
 * @param meaning one line for the coach
 * @param clientSentence one sentence for the client
 */
public record Goal(String id, LocalText name, LocalText meaning, LocalText clientSentence, Source source) {}
