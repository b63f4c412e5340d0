package org.drillsheaf.figure.draw;

/** Numbers of the finer parts in {@link Buffers#part}: garments of the body; faces of props count from {@link #FACES}. */
final class Parts {
    static final short SKIN = 1;
    static final short SHIRT = 2;
    static final short SHORTS = 3;
    static final short HAIR = 4;
    /** Eye, brow and mouth: small fills without an outline. */
    static final short INK = 5;

    static final short FACES = 100;
    static final int FACES_OF_PROP = 20;

    private Parts() {}

    /** @param prop number of the prop from 0; {@code face} less than {@link #FACES_OF_PROP} */
    static short face(int prop, int face) {
        return (short) (FACES + prop * FACES_OF_PROP + face);
    }

    static int faceOf(short part) {
        return (part - FACES) % FACES_OF_PROP;
    }
}
