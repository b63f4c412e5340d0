package org.drillsheaf.figure.pose;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Things a drill may need. Sizes are real ones, written as fractions of the reference stature of 172 cm (common
 * household sizes, no source): a chair seat at 45 cm, a table at 73 cm, a counter at 90 cm, a bed at 50 cm, a step of
 * 12.5 cm.
 */
public enum PropKind {
    FLOOR(Map.of("from", -.4, "to", .4, "z", 0., "halfwidth", .24)),
    WALL(Map.of("height", 1., "low", -.018, "halfwidth", .24, "from", -.4, "to", .4)),
    TABLE(Map.of("top", .424, "from", -1., "to", 0., "z", 0., "halfwidth", .24, "legs", 1.)),
    BED(Map.of("top", .29, "from", -.7, "to", .4, "z", 0., "halfwidth", .27)),
    CHAIR(Map.of("seat", .262, "x", 0., "z", 0., "depth", .235, "width", .125, "back", .52)),
    STOOL(Map.of("top", .25, "x", 0., "z", 0., "depth", .19, "width", .11)),
    STEP(Map.of("top", .073, "from", 0., "to", .17, "z", 0., "halfwidth", .16)),
    COUNTER(Map.of("top", .523, "from", .3, "to", .65, "z", 0., "halfwidth", .24)),
    TOWEL(Map.of("r", .04, "half", .13)),
    BALL(Map.of("r", .05)),
    BLOCK(Map.of("x", .065, "y", .045, "z", .044)),
    BAND(Map.of("r", .0055)),
    STICK(Map.of("r", .008, "overhang", .08)),
    PILLOW(Map.of("x", .11, "y", .035, "z", .16)),
    CUSHION(Map.of("x", .09, "y", .05, "z", .09)),
    PAD(Map.of("from", -.15, "to", .15, "z", 0., "halfwidth", .15, "thick", .02)),
    RAIL(Map.of("r", .012)),
    STRAW(Map.of("r", .0025, "length", .07)),
    BAG(Map.of("x", .05, "y", .085, "z", .03));

    private final Map<String, Double> sizes;

    PropKind(Map<String, Double> sizes) {
        this.sizes = sizes;
    }

    /** The word in pose files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The sizes an author may write, with what they are otherwise; statures. */
    public Map<String, Double> sizes() {
        return sizes;
    }

    public static Optional<PropKind> of(String id) {
        if (id.equals("mat")) {
            return Optional.of(FLOOR);
        }
        return Arrays.stream(values()).filter(k -> k.id().equals(id)).findFirst();
    }

    /** Whether it stands for itself in the room; the others are put where a body point is, or where the author says. */
    boolean isFurniture() {
        return switch (this) {
            case FLOOR, WALL, TABLE, BED, CHAIR, STOOL, STEP, COUNTER, PAD -> true;
            default -> false;
        };
    }

    /** Whether lying or kneeling on it is lying or kneeling on the floor. */
    boolean isFloorLevel() {
        return this == FLOOR || this == PAD;
    }
}
