/**
 * The command line: one class a command. Reads files, calls the core, prints; holds no rule of the trade.
 */
@NullMarked
package org.drillsheaf.cli;

import org.jspecify.annotations.NullMarked;
