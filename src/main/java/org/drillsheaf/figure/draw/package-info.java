/**
 * The picture of a solved pose: scene, tracing, contours, paint order, marks, and one neutral display list with small
 * writers for it. Knows poses and solids, no drill, no client, no file; the same pose, view and style give the same bytes.
 */
@NullMarked
package org.drillsheaf.figure.draw;

import org.jspecify.annotations.NullMarked;
