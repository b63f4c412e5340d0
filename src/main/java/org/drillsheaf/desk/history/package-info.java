/** Undo and redo over immutable documents. */
@NullMarked
package org.drillsheaf.desk.history;

import org.jspecify.annotations.NullMarked;
