package org.drillsheaf.handout.press;

import java.text.Normalizer;

/** Makes any text fit for a page: composed letters, and nothing that a page description or a font cannot hold. */
final class TextFilter {
    private TextFilter() {}

    static String clean(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            if (point == '\t' || point == '\n' || point == '\r') {
                kept.append(' ');
            } else if (isPrintable(point)) {
                kept.appendCodePoint(point);
            }
        });
        return Normalizer.normalize(kept, Normalizer.Form.NFC);
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
