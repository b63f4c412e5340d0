package org.drillsheaf.screen;

import java.util.Arrays;
import java.util.Optional;
import org.drillsheaf.saying.Saying;

/** Units of the tests. */
public enum Unit {
    DEGREES("deg", "°"),
    CENTIMETRES("cm", " cm"),
    SECONDS("s", " s"),
    POINTS("points", " points");

    private final String id;
    private final String suffix;

    Unit(String id, String suffix) {
        this.id = id;
        this.suffix = suffix;
    }

    /** The word in data files. */
    public String id() {
        return id;
    }

    /** What stands behind a number on screen. */
    public String suffix() {
        return suffix;
    }

    /** A number in this unit, to be said in any language. */
    public Saying amount(double number) {
        return Saying.amount(number, id);
    }

    public static Optional<Unit> of(String id) {
        return Arrays.stream(values()).filter(u -> u.id.equals(id)).findFirst();
    }
}
