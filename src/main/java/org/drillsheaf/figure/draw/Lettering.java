package org.drillsheaf.figure.draw;

/** The two weights of letters that pictures use. */
record Lettering(GlyphOutlines bold, GlyphOutlines semibold) {
    static Lettering load() {
        return new Lettering(GlyphOutlines.bold(), GlyphOutlines.semibold());
    }
}
