package org.drillsheaf.figure.draw;

/**
 * Numbers of the finer parts in {@link Buffers#part}: garments of the body from 1, single fingers and toes from {@link #DIGITS},
 * faces of props from {@link #FACES}.
 */
final class Parts {
    static final short SKIN = 1;
    static final short SHIRT = 2;
    static final short SHORTS = 3;
    static final short HAIR = 4;

    private static final short DIGITS = 20;
    private static final short FACES = 100;
    private static final int FACES_OF_PROP = 20;

    private Parts() {}

    /** @param number of a finger or toe, from 0 */
    static short digit(int number) {
        return (short) (DIGITS + number);
    }

    static boolean isDigit(short part) {
        return part >= DIGITS && part < FACES;
    }

    /** What a part is toned as: fingers and toes are skin. */
    static short tone(short part) {
        return isDigit(part) ? SKIN : part;
    }

    /** @param prop number of the prop from 0; {@code face} less than {@link #FACES_OF_PROP} */
    static short face(int prop, int face) {
        return (short) (FACES + prop * FACES_OF_PROP + face);
    }

    /** Number of the face on its prop, see {@link org.drillsheaf.figure.body.PropSolid#face}. */
    static int faceNumber(short part) {
        return (part - FACES) % FACES_OF_PROP;
    }
}
