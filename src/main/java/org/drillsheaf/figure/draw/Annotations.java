package org.drillsheaf.figure.draw;

import java.util.List;
import java.util.Map;

/**
 * What a page adds to a picture.
 *
 * @param keys the number at each mark, by the mark's id, in the digits of the page; a mark without a key gets none
 * @param dimensions measures to draw
 */
public record Annotations(Map<String, String> keys, List<Dimension> dimensions) {
    public static final Annotations NONE = new Annotations(Map.of(), List.of());

    public Annotations {
        keys = Map.copyOf(keys);
        dimensions = List.copyOf(dimensions);
    }

    public static Annotations ofKeys(Map<String, String> keys) {
        return new Annotations(keys, List.of());
    }

    public Annotations withDimensions(List<Dimension> measures) {
        return new Annotations(keys, measures);
    }

    /**
     * A measure that repeats a number of the text.
     *
     * @param of name of a body point
     * @param from name of a body point, or of a surface of a prop such as {@code wall}
     * @param along {@code x} (forward), {@code y} (up) or {@code z} (to the right)
     * @param label the number with its unit, in the page's digits
     */
    public record Dimension(String of, String from, char along, String label) {}
}
