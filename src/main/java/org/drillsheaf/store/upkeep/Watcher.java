package org.drillsheaf.store.upkeep;

/** Is told how far a long job on the record has come; draws a bar, or does nothing. Called on the thread of the job. */
@FunctionalInterface
public interface Watcher {
    Watcher NONE = (done, all) -> {};

    /**
     * @param done rows so far
     * @param all rows there are
     */
    void at(long done, long all);
}
