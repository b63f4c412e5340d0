package org.drillsheaf.figure.draw;

/** How a prop is toned. */
enum PropLook {
    /** Floor and wall. */
    SLAB(0xE9E9E9, 0xCFCFCF),
    /** Table, bed, chair, stool, step, counter, block: sides darker than tops. */
    FURNITURE(0xEFEFEF, 0xD2D2D2),
    BALL(0xF4F4F4, 0xF4F4F4),
    /** Towel, pillow, cushion, pad. */
    SOFT(0xFAFAFA, 0xEDEDED),
    BAND(0x777777, 0x777777),
    STICK(0xC4C4C4, 0xC4C4C4);

    final int colour;
    /** Colour of the faces that look away from the light; for a slab of its narrow edges when it is seen from above. */
    final int sideColour;

    PropLook(int colour, int sideColour) {
        this.colour = colour;
        this.sideColour = sideColour;
    }
}
