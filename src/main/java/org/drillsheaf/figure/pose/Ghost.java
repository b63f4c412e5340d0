package org.drillsheaf.figure.pose;

import java.util.Map;

/** What the pale figure behind a pose shows: where the movement came from. */
public sealed interface Ghost {
    Ghost NONE = new OfAngles(Map.of());

    /**
     * The pose itself with other angles: {@code ghost: {hip.L.flex: 60}}.
     *
     * @param angles degrees, laid over the solved ones; empty = no ghost
     */
    record OfAngles(Map<Unknown.Angle, Double> angles) implements Ghost {
        public OfAngles {
            angles = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(angles));
        }
    }

    /** Another keyframe of the drill: {@code ghost: start}. */
    record OfKeyframe(PoseFrame frame) implements Ghost {}
}
