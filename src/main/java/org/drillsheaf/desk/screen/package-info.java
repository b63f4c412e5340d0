/**
 * The sheet on which a screen is typed in.
 */
@NullMarked
package org.drillsheaf.desk.screen;

import org.jspecify.annotations.NullMarked;
