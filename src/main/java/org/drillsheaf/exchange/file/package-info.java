/**
 * The one way to drills that come in, whatever kind of file they are in.
 */
@NullMarked
package org.drillsheaf.exchange.file;

import org.jspecify.annotations.NullMarked;
