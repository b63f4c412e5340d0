package org.drillsheaf.handout.press;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/**
 * Signs that a font draws with one glyph. The page setter tells the lowest of them, whichever was written; a search for
 * “town’s” would then not find it.
 *
 * @param meant sign told to sign written, of this page
 */
record Twins(Map<Integer, Integer> meant) {
    /** The modifier letter and the quotation mark, the micro sign and the Greek letter, ohm and omega, increment and delta. */
    private static final Map<Integer, Integer> ONE_GLYPH =
            Map.of(0x02BC, 0x2019, 0x00B5, 0x03BC, 0x2126, 0x03A9, 0x2206, 0x0394);

    private static final int MIDDLE_DOT = 0x00B7;
    private static final int KATAKANA_MIDDLE_DOT = 0x30FB;

    static Twins in(String page) {
        Map<Integer, Integer> meant = new TreeMap<>();
        ONE_GLYPH.forEach((told, written) -> {
            if (page.indexOf(written) >= 0 && page.indexOf(told) < 0) {
                meant.put(told, written);
            }
        });
        return new Twins(meant);
    }

    /** @param ideographs whether it is the font of Chinese and Japanese names, which never draws the Latin dot */
    IntUnaryOperator within(boolean ideographs) {
        return told -> ideographs && told == MIDDLE_DOT ? KATAKANA_MIDDLE_DOT : meant.getOrDefault(told, told);
    }
}
