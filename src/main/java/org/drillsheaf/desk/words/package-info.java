/**
 * The window's own texts, in the languages of the interface. Words of the trade come from the packages below.
 */
@NullMarked
package org.drillsheaf.desk.words;

import org.jspecify.annotations.NullMarked;
