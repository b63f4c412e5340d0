/**
 * From a reading to a program: phases, needs, the exact builder with its proof and explanation, doses and re-planning. Knows
 * the packages below; writes no paper, keeps no record.
 */
@NullMarked
package org.drillsheaf.program;

import org.jspecify.annotations.NullMarked;
