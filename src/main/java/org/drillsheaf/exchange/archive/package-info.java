/** A whole catalogue in one zip file: drills, their pictures, and what they were when they were packed. */
@NullMarked
package org.drillsheaf.exchange.archive;

import org.jspecify.annotations.NullMarked;
