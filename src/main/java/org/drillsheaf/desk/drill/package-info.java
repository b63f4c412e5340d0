/** One drill being edited: its draft, its fields with what the check finds beside them, its printed block, its revisions. */
@NullMarked
package org.drillsheaf.desk.drill;

import org.jspecify.annotations.NullMarked;
