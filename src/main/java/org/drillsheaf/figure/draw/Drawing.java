package org.drillsheaf.figure.draw;

import java.util.List;
import java.util.Map;

/**
 * A finished picture as a neutral display list: paths in paint order, in millimetres on paper from the upper left corner,
 * y down. Texts are outlines already. Immutable.
 *
 * @param widthMm width of the picture
 * @param heightMm height of the picture
 * @param paths first is painted first
 * @param anchors named places: {@code floor} (y of the floor line, for aligning pictures), {@code origin} (where the
 *     zero of the room lies, possibly outside the picture), {@code body} and each drawn mark by its id
 */
public record Drawing(double widthMm, double heightMm, List<DrawnPath> paths, Map<String, Box> anchors) {
    public Drawing {
        paths = List.copyOf(paths);
        anchors = Map.copyOf(anchors);
    }
}
