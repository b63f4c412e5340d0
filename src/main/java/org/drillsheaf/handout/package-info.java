/**
 * From a program to paper: templates, languages, figures on the page, PDF. Decides nothing about the program, reads no
 * record and knows no window.
 */
@NullMarked
package org.drillsheaf.handout;

import org.jspecify.annotations.NullMarked;
