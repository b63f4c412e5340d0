package org.drillsheaf.screen;

import java.util.Optional;
import org.drillsheaf.Side;

/**
 * Findings that do not go together.
 *
 * @param findings the findings, in words with their values
 * @param meaning what it may mean
 * @param nextStep what to do
 * @param refer whether a clinician should look at it before loading
 */
public record Contradiction(
        String id, Optional<Side> side, String findings, String meaning, String nextStep, boolean refer) {}
