package org.drillsheaf.program.build;

/**
 * The best choice for one phase alone.
 *
 * @param value packed, without what lies between phases
 */
record PhaseAnswer(long value, Choice drills) {}
