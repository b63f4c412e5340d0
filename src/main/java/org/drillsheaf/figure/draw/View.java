package org.drillsheaf.figure.draw;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillsheaf.figure.body.Vec3;

/**
 * Where the picture is looked at from; the projection is parallel. Full turns change nothing.
 *
 * @param azimuthDegrees turn about the vertical, 0 to 360: 0 looks at the person's right side (they face the right edge of
 *     the page), 90 looks at the front
 * @param elevationDegrees -90 to 90, 90 looks down from above
 */
public record View(double azimuthDegrees, double elevationDegrees) {
    public static final View SIDE = new View(0, 0);
    public static final View FRONT = new View(90, 0);
    public static final View FAR_SIDE = new View(180, 0);
    public static final View BACK = new View(270, 0);
    public static final View TOP = new View(0, 90);

    private static final Pattern QUARTER = Pattern.compile("q:(-?\\d{1,4}(?:\\.\\d+)?),(-?\\d{1,2}(?:\\.\\d+)?)");

    public View {
        double turn = azimuthDegrees % 360; // adding 0.0 below turns -0.0 into 0.0
        azimuthDegrees = Math.rint((turn < 0 ? turn + 360 : turn) * 1e6) / 1e6 % 360 + 0.0;
        if (!(Math.abs(elevationDegrees) <= 90)) {
            throw new IllegalArgumentException("elevation must be within -90 and 90 degrees: " + elevationDegrees);
        }
    }

    /** Reads {@code side}, {@code front}, {@code back}, {@code far-side}, {@code top} or {@code q:azimuth,elevation}. */
    public static Optional<View> parse(String words) {
        return switch (words.strip()) {
            case "side" -> Optional.of(SIDE);
            case "front" -> Optional.of(FRONT);
            case "back" -> Optional.of(BACK);
            case "far-side" -> Optional.of(FAR_SIDE);
            case "top" -> Optional.of(TOP);
            default -> {
                Matcher quarter = QUARTER.matcher(words.strip());
                if (!quarter.matches() || Math.abs(Double.parseDouble(quarter.group(2))) > 90) {
                    yield Optional.empty();
                }
                yield Optional.of(new View(Double.parseDouble(quarter.group(1)), Double.parseDouble(quarter.group(2))));
            }
        };
    }

    /** The words {@link #parse} reads. */
    public String words() {
        if (equals(SIDE)) {
            return "side";
        } else if (equals(FRONT)) {
            return "front";
        } else if (equals(BACK)) {
            return "back";
        } else if (equals(FAR_SIDE)) {
            return "far-side";
        } else if (equals(TOP)) {
            return "top";
        }
        return "q:" + plain(azimuthDegrees) + "," + plain(elevationDegrees);
    }

    /** How far to the right of the zero of the room the view shows a point, statures. */
    public double across(Vec3 point) {
        return Camera.of(this).right(point.x(), point.y(), point.z());
    }

    /** How far above the zero of the room the view shows a point, statures. */
    public double upward(Vec3 point) {
        return Camera.of(this).up(point.x(), point.y(), point.z());
    }

    /** The view that shows a mirrored person as the mirrored picture. */
    public View mirrored() {
        return new View(180 - azimuthDegrees, elevationDegrees);
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.3f", value);
    }
}
