/**
 * The small language in which presentations, contradictions and gates are written: three-valued truth, rules read from YAML
 * with their lines, and the facts a rule asks for. Knows no test, norm or client; what a word means is told by whoever gives
 * the facts.
 */
@NullMarked
package org.drillsheaf.screen.rule;

import org.jspecify.annotations.NullMarked;
