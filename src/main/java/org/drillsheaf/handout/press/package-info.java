/**
 * The machinery of print: locked-down templates, page setting, pictures painted onto the page, the last pass over the PDF.
 * Knows no client, no drill and no program; whatever it is given, it reads no file and asks no network.
 */
@NullMarked
package org.drillsheaf.handout.press;

import org.jspecify.annotations.NullMarked;
