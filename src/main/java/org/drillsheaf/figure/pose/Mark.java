package org.drillsheaf.figure.pose;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.figure.body.Vec3;

/** A sign on the picture. Each has an id, so that a step of the text can be keyed to it. */
public sealed interface Mark {
    String id();

    /** The views it is drawn in; empty means all. */
    List<String> views();

    /** Left and right exchanged. */
    Mark mirrored();

    /**
     * A straight arrow.
     *
     * @param at body point it starts at
     * @param direction unit vector in the world
     * @param length statures; {@code gap} likewise, between point and arrow
     * @param towards whether it points at the body point instead of away
     * @param label words in the author's pictures; may be empty
     */
    record Arrow(
            String id,
            String at,
            Vec3 direction,
            double length,
            double gap,
            boolean towards,
            String label,
            List<String> views)
            implements Mark {
        @Override
        public Arrow mirrored() {
            return new Arrow(id, MirroredNames.of(at), direction.mirrored(), length, gap, towards, label, views);
        }
    }

    /** A curved arrow of a body point about a joint, from the ghost's place to the figure's. */
    record Swing(String id, String about, String at, double radiusShare, String label, List<String> views)
            implements Mark {
        @Override
        public Swing mirrored() {
            return new Swing(id, MirroredNames.of(about), MirroredNames.of(at), radiusShare, label, views);
        }
    }

    /**
     * A bar that shows where something presses.
     *
     * @param millimetres width on paper
     * @param upright whether the bar stands; else it lies
     */
    record Pad(String id, String at, double millimetres, boolean upright, List<String> views) implements Mark {
        @Override
        public Pad mirrored() {
            return new Pad(id, MirroredNames.of(at), millimetres, upright, views);
        }
    }

    /**
     * The arc of an angle, in the author's pictures only.
     *
     * @param arms what the angle lies between; empty for the joint's own clinical angle
     */
    record AngleArc(String id, String at, Optional<Arms> arms, double millimetres, List<String> views) implements Mark {
        @Override
        public AngleArc mirrored() {
            return new AngleArc(id, MirroredNames.of(at), arms.map(Arms::mirrored), millimetres, views);
        }
    }

    /**
     * The arms of a goniometer laid against the room, such as a shin against the vertical.
     *
     * @param zero direction in the world in which the angle is 0
     * @param to body point that the moving arm points at
     * @param counted how the value is written: the angle times this, −1 where the test counts this way as minus
     */
    record Arms(Vec3 zero, String to, int counted) {
        Arms mirrored() {
            return new Arms(zero.mirrored(), MirroredNames.of(to), counted);
        }
    }

    /** Breath strokes at the mouth. */
    record Breath(String id, boolean out, String label, List<String> views) implements Mark {
        @Override
        public Breath mirrored() {
            return this;
        }
    }
}
