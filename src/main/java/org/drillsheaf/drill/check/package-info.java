/**
 * The catalogue check: what a schema cannot see in drills, told with file, line and remedy. Texts, numbers, poses, families,
 * coverage. Reports only; changes nothing.
 */
@NullMarked
package org.drillsheaf.drill.check;

import org.jspecify.annotations.NullMarked;
