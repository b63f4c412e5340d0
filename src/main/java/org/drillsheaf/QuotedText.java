package org.drillsheaf;

import java.util.Locale;

/** A text between double quotes, as YAML and JSON read it: nothing in it can be taken for anything but text. */
public final class QuotedText {
    private QuotedText() {}

    /** The text in double quotes; control characters and the separators that would end a line are written as escapes. */
    public static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default -> {
                    if (Character.isISOControl(c) || c == 0x2028 || c == 0x2029 || c == 0xfeff) {
                        quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
                    } else {
                        quoted.appendCodePoint(c);
                    }
                }
            }
        });
        return quoted.append('"').toString();
    }
}
