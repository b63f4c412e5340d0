/** Zip files that a stranger may have made. */
@NullMarked
package org.drillsheaf.exchange.zip;

import org.jspecify.annotations.NullMarked;
