package org.drillsheaf.screen;

import org.drillsheaf.saying.Saying;

/**
 * Findings that do not go together.
 *
 * @param findings the findings with their values
 * @param meaning what it may mean
 * @param nextStep what to do
 * @param refer whether a clinician should look at it before loading
 */
public record Contradiction(String id, Saying findings, Saying meaning, Saying nextStep, boolean refer) {}
