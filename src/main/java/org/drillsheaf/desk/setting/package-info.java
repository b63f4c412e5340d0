/**
 * What one desk remembers for itself: language, theme, size, where its record lies.
 */
@NullMarked
package org.drillsheaf.desk.setting;

import org.jspecify.annotations.NullMarked;
