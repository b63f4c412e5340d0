/**
 * Clients: their list, and one client's page with its visits and sheets.
 */
@NullMarked
package org.drillsheaf.desk.client;

import org.jspecify.annotations.NullMarked;
