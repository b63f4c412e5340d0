/**
 * The exact builder on its own plain records: ids and whole numbers in, a proved choice of drills for each phase out. How it
 * works is told in {@code docs/decisions/0003-builder.md}. Knows no drill file, no client and no words for people.
 */
@NullMarked
package org.drillsheaf.program.build;

import org.jspecify.annotations.NullMarked;
