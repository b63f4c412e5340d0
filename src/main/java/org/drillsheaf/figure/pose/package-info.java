/**
 * Poses as data: reads what an author wrote, places props, solves the contacts within the joints' limits and answers
 * questions about the result (angles, points, measures, distances, words). Draws nothing and knows no drill.
 */
@NullMarked
package org.drillsheaf.figure.pose;

import org.jspecify.annotations.NullMarked;
