/**
 * The clinic's page: details, logo, backups, passphrase, how the window looks.
 */
@NullMarked
package org.drillsheaf.desk.house;

import org.jspecify.annotations.NullMarked;
