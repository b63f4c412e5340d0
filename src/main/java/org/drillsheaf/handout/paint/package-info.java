/**
 * Small drawings that belong to the page and not to a body: breath line, effort meter, warning signs, charts. Everything is
 * paths in millimetres; texts stay on the page, where a reader and a search can find them.
 */
@NullMarked
package org.drillsheaf.handout.paint;

import org.jspecify.annotations.NullMarked;
