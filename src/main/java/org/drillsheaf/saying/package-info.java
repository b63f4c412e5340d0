/**
 * What the program has to say, before it is worded: the core says what, the same in every language; {@link
 * org.drillsheaf.saying.Speech} says it in one.
 */
@NullMarked
package org.drillsheaf.saying;

import org.jspecify.annotations.NullMarked;
