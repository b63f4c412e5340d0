/**
 * The two engines, H2 in one encrypted file and PostgreSQL at an address: connections, transactions, migrations, and what
 * an engine's complaint means to a person. Knows no client and no drill.
 */
@NullMarked
package org.drillsheaf.store.sql;

import org.jspecify.annotations.NullMarked;
