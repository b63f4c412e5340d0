/**
 * Forces on a solved pose: masses, centre of mass, what carries the body and how the load is shared. Every result is that
 * of a body at rest; lengths are fractions of stature, forces fractions of body weight. Knows no drill and draws nothing.
 */
@NullMarked
package org.drillsheaf.figure.statics;

import org.jspecify.annotations.NullMarked;
