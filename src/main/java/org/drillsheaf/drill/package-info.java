/**
 * The catalogue: drills with their texts, doses and poses, and the safety rules that read those poses. Knows the figure and
 * the client, but nothing of tests and programs.
 */
@NullMarked
package org.drillsheaf.drill;

import org.jspecify.annotations.NullMarked;
