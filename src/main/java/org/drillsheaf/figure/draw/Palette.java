package org.drillsheaf.figure.draw;

/** Colours of the pictures, 0xRRGGBB. All but the accent are greys, and the accent prints as a middle grey. */
final class Palette {
    static final int PAPER = 0xFFFFFF;
    static final int INK = 0x1A1A1A;
    static final int PROP_INK = 0x5A5A5A;
    static final int ACCENT = 0xB3471B;
    static final int FEEL_TINT = 0xEFB8A2;
    static final int GHOST_INK = 0xA6A6A6;
    static final int GHOST_FILL = 0xF6F6F6;
    static final int SHADE = 0x000000;
    static final double SHADE_OPACITY = 0.11;

    private Palette() {}

    static int garment(short part, boolean far) {
        return switch (part) {
            case Parts.SHIRT -> far ? 0xCFCFCF : 0xDCDCDC;
            case Parts.SHORTS -> far ? 0x989898 : 0xA9A9A9;
            case Parts.HAIR -> 0x6E6E6E;
            default -> far ? 0xEDEDED : PAPER;
        };
    }
}
