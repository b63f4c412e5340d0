package org.drillsheaf.cli;

import java.util.UUID;
import org.drillsheaf.store.Store;

/**
 * One client in an open record.
 *
 * @param who works on it
 */
record OpenRecord(Store store, UUID client, String who) {}
