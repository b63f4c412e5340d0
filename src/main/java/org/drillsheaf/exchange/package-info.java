/**
 * Files that go to and come from other programs. A catalogue goes out as one archive or as a sheet; what comes in is merged three ways with the
 * catalogue as it is now, checked like every drill, shown as a plan, and only then written into the clinic's own folder, all
 * of it or nothing. Knows no paper and no database.
 */
@NullMarked
package org.drillsheaf.exchange;

import org.jspecify.annotations.NullMarked;
