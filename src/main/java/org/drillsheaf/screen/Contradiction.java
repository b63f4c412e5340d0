package org.drillsheaf.screen;

/**
 * Findings that do not go together.
 *
 * @param findings the findings, in words with their values
 * @param meaning what it may mean
 * @param nextStep what to do
 * @param refer whether a clinician should look at it before loading
 */
public record Contradiction(String id, String findings, String meaning, String nextStep, boolean refer) {}
