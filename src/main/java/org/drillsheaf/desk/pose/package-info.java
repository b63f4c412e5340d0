/** The pose of a drill being edited: the figure in several views, its joints, contacts, props, marks and keyframes. */
@NullMarked
package org.drillsheaf.desk.pose;

import org.jspecify.annotations.NullMarked;
