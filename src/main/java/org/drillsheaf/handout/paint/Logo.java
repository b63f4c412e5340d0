package org.drillsheaf.handout.paint;

import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.Problems;

/**
 * A clinic's logo: a plain drawing (SVG) or a small picture (PNG). It may come from anybody, so it is read by rules of what is
 * allowed; whatever else stands in it is refused and told, and nothing that it names is looked at.
 */
public final class Logo {
    /** Beside one line of the page's head; the pages belong to the client. */
    private static final double MOST_WIDTH_MM = 30;

    private static final double HEIGHT_MM = 4.2;

    private Logo() {}

    /**
     * Reads a logo.
     *
     * @param file its name, for messages; the ending says what it is
     * @return empty when {@code problems} got an error
     */
    public static Optional<Picture> read(String file, byte[] content, Problems problems) {
        String ending = file.substring(file.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        Optional<Picture> picture =
                switch (ending) {
                    case "svg" -> SvgLogo.read(file, content, problems);
                    case "png" -> PngLogo.read(file, content, problems);
                    default -> {
                        problems.error(file, 0, "A logo is an SVG or a PNG file", "Save it as one of these");
                        yield Optional.empty();
                    }
                };
        return picture.map(p -> p.scaled(Math.min(MOST_WIDTH_MM / p.widthMm(), HEIGHT_MM / p.heightMm())));
    }
}
