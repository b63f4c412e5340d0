package org.drillsheaf.drill.library;

import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.safety.SafetyRules;

/** Everything about drills that lies in a project folder. */
public record Library(Catalogue catalogue, SafetyRules safetyRules) {}
