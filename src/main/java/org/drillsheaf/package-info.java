/**
 * Values that every package may use: sides, sources, texts by language, problems for people, and YAML that knows its lines.
 * Nothing here knows a drill, a client or a picture.
 */
@NullMarked
package org.drillsheaf;

import org.jspecify.annotations.NullMarked;
