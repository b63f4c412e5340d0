package org.drillsheaf.program;

/** What comes out of the builder: a program, or the reason why there is none. */
public sealed interface BuildResult permits Program, ClashSet, InPersonOnly, Waits, Undecided {}
