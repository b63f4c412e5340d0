/**
 * What the record keeps: clients in parts, readings, programs, documents handed out, drills with every revision, coaches,
 * settings. Each class reads and writes its own tables.
 */
@NullMarked
package org.drillsheaf.store.record;

import org.jspecify.annotations.NullMarked;
