/**
 * The frame of the window: places, menu, status line, keys that work everywhere.
 */
@NullMarked
package org.drillsheaf.desk.frame;

import org.jspecify.annotations.NullMarked;
