package org.drillsheaf.handout.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.handout.paint.Picture;

/** The pictures of one document; templates name them by the address they get here. Not safe for several threads. */
final class PictureShelf {
    static final String ADDRESS = "res:picture/";

    private final List<Picture> pictures = new ArrayList<>();

    /** Keeps a picture and tells a template where it is and how large: {@code src}, {@code width}, {@code height}, numbers in mm. */
    Map<String, Object> keep(Picture picture) {
        pictures.add(picture);
        return Map.of(
                "src",
                "url('" + ADDRESS + pictures.size() + "')",
                "width",
                millimetres(picture.widthMm()),
                "height",
                millimetres(picture.heightMm()),
                "widthMm",
                picture.widthMm(),
                "heightMm",
                picture.heightMm());
    }

    Optional<Picture> at(String address) {
        if (!address.startsWith(ADDRESS)) {
            return Optional.empty();
        }
        String number = address.substring(ADDRESS.length());
        if (!number.matches("[1-9]\\d{0,5}") || Integer.parseInt(number) > pictures.size()) {
            return Optional.empty();
        }
        return Optional.of(pictures.get(Integer.parseInt(number) - 1));
    }

    static String millimetres(double value) {
        return String.format(Locale.ROOT, "%.3fmm", value);
    }
}
