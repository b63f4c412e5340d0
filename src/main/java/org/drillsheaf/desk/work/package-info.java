/**
 * Work beside the toolkit's thread: nothing on that thread but painting.
 */
@NullMarked
package org.drillsheaf.desk.work;

import org.jspecify.annotations.NullMarked;
