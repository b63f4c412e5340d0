package org.drillsheaf.exchange.sheet;

/** A cell that cannot be read, with what would be right. */
final class CellMistake extends Exception {
    private final String remedy;

    CellMistake(String what, String remedy) {
        super(what);
        this.remedy = remedy;
    }

    String what() {
        return String.valueOf(getMessage());
    }

    String remedy() {
        return remedy;
    }
}
