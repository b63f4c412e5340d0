/** The figure in the window: a node that shows a drawing, and small pictures made in the background. */
@NullMarked
package org.drillsheaf.desk.figure;

import org.jspecify.annotations.NullMarked;
