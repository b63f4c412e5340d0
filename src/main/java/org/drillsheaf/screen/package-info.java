/**
 * What was measured and what it means together: tests, errors of measurement, findings, presentations, the safety gate, what
 * to test next and what changed. Knows the client, but no drill, program or picture.
 */
@NullMarked
package org.drillsheaf.screen;

import org.jspecify.annotations.NullMarked;
