/** What two sides made of one drill since they last were the same, brought together field by field. */
@NullMarked
package org.drillsheaf.exchange.merge;

import org.jspecify.annotations.NullMarked;
