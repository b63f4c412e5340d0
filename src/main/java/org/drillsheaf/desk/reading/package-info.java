/**
 * The sheet that shows the reading with its working, and the goals by phase.
 */
@NullMarked
package org.drillsheaf.desk.reading;

import org.jspecify.annotations.NullMarked;
