package org.drillsheaf.client;

import java.util.Arrays;
import java.util.Optional;

/** Paper size of the client's documents. */
public enum Paper {
    A4("A4", 210, 297),
    LETTER("Letter", 215.9, 279.4);

    private final String id;
    private final double widthMillimetres;
    private final double heightMillimetres;

    Paper(String id, double widthMillimetres, double heightMillimetres) {
        this.id = id;
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
    }

    public String id() {
        return id;
    }

    public double widthMillimetres() {
        return widthMillimetres;
    }

    public double heightMillimetres() {
        return heightMillimetres;
    }

    public static Optional<Paper> of(String id) {
        return Arrays.stream(values()).filter(p -> p.id.equals(id)).findFirst();
    }
}
