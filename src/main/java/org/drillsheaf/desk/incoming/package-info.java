/**
 * Drills that come in from a file: what they would change, drill by drill, and taking them in.
 */
@NullMarked
package org.drillsheaf.desk.incoming;

import org.jspecify.annotations.NullMarked;
