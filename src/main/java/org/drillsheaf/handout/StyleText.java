package org.drillsheaf.handout;

import java.util.Optional;

/**
 * A clinic's house style as it is kept, in a file or in the record.
 *
 * @param name what to call it in a message
 * @param yaml the style
 * @param logo content of the logo that the style names; empty leaves it out
 */
public record StyleText(String name, String yaml, Optional<byte[]> logo) {}
