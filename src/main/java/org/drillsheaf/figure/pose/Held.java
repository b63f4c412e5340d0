package org.drillsheaf.figure.pose;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.figure.body.HandShape;

/** What a hand can hold, and the shape it takes for that. Where it holds is said by the contacts of the pose. */
public enum Held {
    NOTHING(HandShape.OPEN),
    SURFACE(HandShape.OPEN),
    RIBS(HandShape.RESTING),
    HIPS(HandShape.RESTING),
    CUSHION(HandShape.CUPPED),
    KNEE(HandShape.CUPPED),
    THIGH(HandShape.CUPPED),
    ARM(HandShape.CUPPED),
    EDGE(HandShape.CUPPED),
    BAND(HandShape.FIST),
    STRAP(HandShape.FIST),
    STICK(HandShape.FIST),
    RAIL(HandShape.FIST),
    BAG(HandShape.FIST);

    private final HandShape shape;

    Held(HandShape shape) {
        this.shape = shape;
    }

    /** The word in pose files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public HandShape shape() {
        return shape;
    }

    static Optional<Held> of(String id) {
        return Arrays.stream(values()).filter(held -> held.id().equals(id)).findFirst();
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(Held::id).toList();
    }
}
