package org.drillsheaf.handout.press;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Joins Arabic letters before the page is set. The fallback font holds the joined forms as characters of their own, and the
 * last pass over the PDF turns them back into letters for search and copy.
 */
final class RightToLeft {
    private RightToLeft() {}

    /** What is read out or listed and never drawn: markup with its attributes, what describes the document, its bookmarks. */
    private static final Pattern NOT_DRAWN = Pattern.compile(
            "<fo:declarations>.*?</fo:declarations>|<fo:bookmark-tree>.*?</fo:bookmark-tree>|<[^>]*>", Pattern.DOTALL);

    /** Short vowels as signs that stand alone. */
    private static final Pattern VOWEL = Pattern.compile("[\\uFE70-\\uFE7F]");

    /** @param page a page description whose attributes hold no bare {@code >} */
    static String shaped(String page) {
        if (page.codePoints()
                .noneMatch(p -> Character.getDirectionality(p) == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC)) {
            return page;
        }
        StringBuilder shaped = new StringBuilder(page.length());
        Matcher markup = NOT_DRAWN.matcher(page);
        int at = 0;
        while (markup.find()) {
            shaped.append(letters(page.substring(at, markup.start()))).append(markup.group());
            at = markup.end();
        }
        return shaped.append(letters(page.substring(at))).toString();
    }

    private static String letters(String text) {
        if (text.isBlank()) {
            return text;
        }
        try {
            String joined = new ArabicShaping(ArabicShaping.LETTERS_SHAPE
                            | ArabicShaping.TEXT_DIRECTION_LOGICAL
                            | ArabicShaping.LENGTH_GROW_SHRINK)
                    .shape(text);
            return VOWEL.matcher(joined).replaceAll(sign -> mark(sign.group()));
        } catch (ArabicShapingException e) {
            throw new IllegalStateException("text of any length can be shaped when it may grow", e);
        }
    }

    /** Above or below the letter before, where the joiner makes a sign of its own width. */
    private static String mark(String vowel) {
        String plain = Normalizer.normalize(vowel, Normalizer.Form.NFKC);
        return plain.substring(plain.length() - 1);
    }
}
