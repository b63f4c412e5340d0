/**
 * The client: who they are, what they live with, what they own, and what they answered to the safety questions of a visit.
 * Knows no test, drill, picture or program.
 */
@NullMarked
package org.drillsheaf.client;

import org.jspecify.annotations.NullMarked;
