package org.drillsheaf.handout.press;

import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes any text fit for a page: composed letters, and nothing that a page description or a font cannot hold. */
final class TextFilter {
    /** Twice as long as finds room in a title; ideographs break anywhere by themselves. */
    private static final Pattern ENDLESS_WORD = Pattern.compile("[^\\s\\p{IsIdeographic}]{31,}");

    private static final Pattern AS_MUCH_AS_A_LINE_HOLDS = Pattern.compile(".{15}(?=.)");

    private TextFilter() {}

    static String clean(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            if (point == '\t' || point == '\n' || point == '\r' || point == 0x2028 || point == 0x2029) {
                kept.append(' ');
            } else if (isPrintable(point)) {
                kept.appendCodePoint(point);
            }
        });
        return broken(Normalizer.normalize(kept, Normalizer.Form.NFC));
    }

    /** A word that no line can hold is broken, so that it does not leave the page. */
    private static String broken(String text) {
        return ENDLESS_WORD
                .matcher(text)
                .replaceAll(word -> Matcher.quoteReplacement(
                        AS_MUCH_AS_A_LINE_HOLDS.matcher(word.group()).replaceAll("$0 ")));
    }

    private static boolean isPrintable(int point) {
        boolean control = point < 0x20 || point >= 0x7F && point <= 0x9F;
        boolean broken = point >= 0xD800 && point <= 0xDFFF || (point & 0xFFFE) == 0xFFFE;
        boolean privateUse = Character.getType(point) == Character.PRIVATE_USE;
        return !control && !broken && !privateUse && !steersDirection(point);
    }

    /** Marks that turn the direction of text; no font draws them, and they can make a text read as another. */
    private static boolean steersDirection(int point) {
        return point == 0x200B
                || point == 0x200E
                || point == 0x200F
                || point == 0x061C
                || point >= 0x202A && point <= 0x202E
                || point >= 0x2060 && point <= 0x206F
                || point == 0xFEFF;
    }
}
