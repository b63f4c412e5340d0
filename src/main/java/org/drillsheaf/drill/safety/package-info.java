/**
 * Conditions as data and the judge that reads them: what a client's conditions do to a drill, from its solved pose, its
 * largest dose and its author's tags. Three-valued throughout, and what is not known is never safe. No rule about a
 * particular condition or drill stands in the code.
 */
@NullMarked
package org.drillsheaf.drill.safety;

import org.jspecify.annotations.NullMarked;
