/**
 * What stands on the pages, as plain values in the reader's language: one record a document. Nothing here knows how a page is
 * set, and nothing decides what a client may do.
 */
@NullMarked
package org.drillsheaf.handout.page;

import org.jspecify.annotations.NullMarked;
