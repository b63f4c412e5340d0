/**
 * What has changed from visit to visit, test by test.
 */
@NullMarked
package org.drillsheaf.desk.progress;

import org.jspecify.annotations.NullMarked;
