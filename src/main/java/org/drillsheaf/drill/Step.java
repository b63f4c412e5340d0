package org.drillsheaf.drill;

import java.util.Optional;
import org.drillsheaf.LocalText;

/**
 * One thing to do.
 *
 * @param mark id of the mark in the picture that shows it
 * @param keyframe picture it belongs to
 * @param line line of the file, for messages
 */
public record Step(LocalText text, Optional<String> mark, Keyframe keyframe, int line) {}
