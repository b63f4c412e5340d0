package org.drillsheaf.drill;

import org.drillsheaf.LocalText;

/** A common fault and what mends it, both in the client's words. */
public record Fault(LocalText fault, LocalText fix) {}
