package org.drillsheaf.program.build;

/** Counts what a search did. Not safe for several threads. */
final class Tally {
    long looked;
    long ruledOut;
    long nodes;
}
