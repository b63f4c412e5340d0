/**
 * Before a record is open: first start, passphrase, lock.
 */
@NullMarked
package org.drillsheaf.desk.start;

import org.jspecify.annotations.NullMarked;
