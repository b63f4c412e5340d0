/**
 * How the window looks: theme, size, fonts, and the small parts that every page is made of.
 */
@NullMarked
package org.drillsheaf.desk.look;

import org.jspecify.annotations.NullMarked;
