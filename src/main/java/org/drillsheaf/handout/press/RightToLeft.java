package org.drillsheaf.handout.press;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;

/**
 * Joins Arabic letters before the page is set. The fallback font holds the joined forms as characters of their own, and the
 * last pass over the PDF turns them back into letters for search and copy.
 */
final class RightToLeft {
    private RightToLeft() {}

    static String shaped(String page) {
        if (page.codePoints()
                .noneMatch(p -> Character.getDirectionality(p) == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC)) {
            return page;
        }
        try {
            return new ArabicShaping(ArabicShaping.LETTERS_SHAPE
                            | ArabicShaping.TEXT_DIRECTION_LOGICAL
                            | ArabicShaping.LENGTH_GROW_SHRINK)
                    .shape(page);
        } catch (ArabicShapingException e) {
            throw new IllegalStateException("text of any length can be shaped when it may grow", e);
        }
    }
}
