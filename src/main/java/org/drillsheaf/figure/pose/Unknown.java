package org.drillsheaf.figure.pose;

import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;

/** A number the solver may change. */
public sealed interface Unknown {

    /** As it is written under {@code solve}. */
    String word();

    /** A coordinate of the middle of the hips. */
    record Root(Axis axis) implements Unknown {
        @Override
        public String word() {
            return "root." + axis.name().toLowerCase(Locale.ROOT);
        }
    }

    /** The turn of the whole figure about the vertical, degrees. */
    record Heading() implements Unknown {
        @Override
        public String word() {
            return "heading";
        }
    }

    /** An angle of one side, or of both sides together (or of the middle) when the side is empty. */
    record Angle(Motion motion, Optional<Side> side) implements Unknown {
        @Override
        public String word() {
            return motion.joint() + side.map(s -> s == Side.RIGHT ? ".R" : ".L").orElse("") + "." + motion.movement();
        }
    }

    enum Axis {
        X,
        Y,
        Z
    }
}
