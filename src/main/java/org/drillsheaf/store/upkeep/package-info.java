/**
 * Keeping the record safe as a whole: checking it, backups, restoring, a new passphrase, moving it to another engine. Works on
 * tables and files, and knows of clients only that they can be erased.
 */
@NullMarked
package org.drillsheaf.store.upkeep;

import org.jspecify.annotations.NullMarked;
