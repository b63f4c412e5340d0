/** The catalogue as a table of one row a drill, in XLSX or CSV, that can be edited anywhere and brought back. */
@NullMarked
package org.drillsheaf.exchange.sheet;

import org.jspecify.annotations.NullMarked;
