/**
 * Finding clients and drills while somebody types: words without case and accents, in memory, kept up to date by the feed
 * of changes.
 */
@NullMarked
package org.drillsheaf.store.search;

import org.jspecify.annotations.NullMarked;
