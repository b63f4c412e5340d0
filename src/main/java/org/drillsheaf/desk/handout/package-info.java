/**
 * The sheet with the papers: the real pages before they are printed.
 */
@NullMarked
package org.drillsheaf.desk.handout;

import org.jspecify.annotations.NullMarked;
