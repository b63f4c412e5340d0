/**
 * The record: clients, visits, programs and catalogue revisions in a database, with backup and audit. The only place that
 * talks to a database; knows no paper and no window.
 */
@NullMarked
package org.drillsheaf.store;

import org.jspecify.annotations.NullMarked;
