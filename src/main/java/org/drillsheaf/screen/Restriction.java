package org.drillsheaf.screen;

import org.drillsheaf.saying.Saying;

/**
 * A restriction that a presentation brings, whether it is held or, as the cautious default, still open.
 *
 * @param id for example {@code no-end-range}
 * @param words one clause for the coach
 * @param because the presentation or flag that brings it
 */
public record Restriction(String id, Saying words, Saying because) {}
