/**
 * The sheet with the program: phases as columns, swaps, clashes.
 */
@NullMarked
package org.drillsheaf.desk.program;

import org.jspecify.annotations.NullMarked;
