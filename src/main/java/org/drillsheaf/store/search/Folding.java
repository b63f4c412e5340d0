package org.drillsheaf.store.search;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.Normalizer2;

/** Brings words to one form for comparing: without case, accents and typographic letters. */
public final class Folding {
    private static final Normalizer2 TAKEN_APART = Normalizer2.getNFKDInstance();

    private Folding() {}

    /** Words in small letters with one space between; anything that is neither letter nor digit parts words. */
    public static String fold(String text) {
        String apart = TAKEN_APART.normalize(UCharacter.foldCase(text, true));
        StringBuilder folded = new StringBuilder(apart.length());
        apart.codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || c == '\'' || c == '’') {
                return;
            }
            String plain = plain(c);
            if (!plain.isEmpty()) {
                folded.append(plain);
            } else if (Character.isLetterOrDigit(c)) {
                folded.appendCodePoint(c);
            } else if (folded.length() > 0 && folded.charAt(folded.length() - 1) != ' ') {
                folded.append(' ');
            }
        });
        return folded.toString().strip();
    }

    /** Letters that Unicode does not take apart but a keyboard without them does; empty for all others. */
    private static String plain(int c) {
        return switch (c) {
            case 'ø' -> "o";
            case 'ł' -> "l";
            case 'đ', 'ð' -> "d";
            case 'þ' -> "th";
            case 'æ' -> "ae";
            case 'œ' -> "oe";
            case 'ı' -> "i";
            case 'ħ' -> "h";
            case 'ŧ' -> "t";
            default -> "";
        };
    }
}
