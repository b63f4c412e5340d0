/**
 * The one flow for whoever drives it: the knowledge of the house read once, a client's visits one after the other, the program
 * along them, and what their papers are made from. The command line and the desk stand on it, so that both say the same. Rules
 * of the trade stay in the packages below; nothing is written here.
 */
@NullMarked
package org.drillsheaf.course;

import org.jspecify.annotations.NullMarked;
