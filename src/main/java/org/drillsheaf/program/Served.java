package org.drillsheaf.program;

/**
 * What a drill in a program does for one goal.
 *
 * @param strength 1 to 3
 * @param adds how much of the goal's coverage would be lost without the drill, up to the target
 */
public record Served(String goal, int strength, int adds) {}
