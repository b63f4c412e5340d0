package org.drillsheaf.handout.page;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A sheet of paper, upright. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** Reads {@code A4} or {@code letter}, in small or capital letters. */
    public static Optional<Paper> of(String word) {
        String wanted = word.toUpperCase(Locale.ROOT);
        return Arrays.stream(values()).filter(p -> p.name().equals(wanted)).findFirst();
    }
}
