/** The place of the drills: the list of the whole catalogue, and the page that holds list, form and pose. */
@NullMarked
package org.drillsheaf.desk.catalogue;

import org.jspecify.annotations.NullMarked;
