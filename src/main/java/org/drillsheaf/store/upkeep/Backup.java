package org.drillsheaf.store.upkeep;

import java.time.Instant;
import org.drillsheaf.store.sql.StoreAddress;

/**
 * A backup: a whole record in a file of its own, with the passphrase that was in use on its day.
 *
 * @param bytes size of the file
 */
public record Backup(StoreAddress.File address, Instant made, long bytes) {}
