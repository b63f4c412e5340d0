/**
 * The catalogue as it lies in a folder: vocabularies, safety rules, cautions and drills read together. The only place of the
 * drill package that touches files.
 */
@NullMarked
package org.drillsheaf.drill.library;

import org.jspecify.annotations.NullMarked;
