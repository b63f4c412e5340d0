package org.drillsheaf.exchange.merge;

/** Which side wins where both changed the same field. */
public enum Take {
    /** The catalogue as it is now. */
    MINE,
    /** The file that comes in. */
    THEIRS
}
