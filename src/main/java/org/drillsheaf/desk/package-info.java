/**
 * The window: one package a page, each a view and a view model. The only place that knows the window toolkit; holds no rule of
 * the trade.
 */
@NullMarked
package org.drillsheaf.desk;

import org.jspecify.annotations.NullMarked;
