/**
 * Drawings of tests and drills as images, drawn beside the toolkit's thread and kept.
 */
@NullMarked
package org.drillsheaf.desk.picture;

import org.jspecify.annotations.NullMarked;
