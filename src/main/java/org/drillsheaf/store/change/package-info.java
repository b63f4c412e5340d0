/**
 * The audit, which is append-only and doubles as the feed of changes made at other desks. Holds who, when, which record
 * and which fields, never a value.
 */
@NullMarked
package org.drillsheaf.store.change;

import org.jspecify.annotations.NullMarked;
