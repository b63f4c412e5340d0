package org.drillsheaf.exchange.sheet;

import java.util.Optional;

/** Cells whose text cannot be meant. */
final class BadText {
    private static final char LOST_LETTER = '\ufffd';

    private BadText() {}

    /** What is wrong with a cell; empty when nothing is. */
    static Optional<String> in(String cell) {
        if (cell.length() > CellText.LONGEST) {
            return Optional.of("The cell holds " + cell.length() + " signs");
        }
        if (cell.indexOf(LOST_LETTER) >= 0) {
            return Optional.of("The text has lost letters on its way through another program");
        }
        boolean hasControls =
                cell.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t');
        return hasControls ? Optional.of("The text holds signs that cannot be printed") : Optional.empty();
    }
}
