package org.drillsheaf.figure.body;

/**
 * One solid of the body.
 *
 * @param name such as {@code trunk} or {@code thigh.R}; all names stand in {@link PartNames}
 */
public record BodyPart(String name, BodyGroup group, FleshSolid solid) {}
