package org.drillsheaf;

/**
 * Where a number or rule comes from.
 *
 * @param text the citation, or a few words for the kinds that have none
 */
public record Source(Kind kind, String text) {

    /** How far a value can be trusted. */
    public enum Kind {
        /** Read in the source that the text names. */
        PUBLISHED,
        /** Our arithmetic on a published value. */
        DERIVED,
        /** Used in the trade; there is no source. */
        COMMON_PRACTICE,
        /** Our own estimate, for the clinic to replace. */
        HOUSE,
        /** Remembered from a source that nobody has re-read. */
        MEMORY;

        /** The word in data files, for example {@code common-practice}. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }

        public static java.util.Optional<Kind> of(String id) {
            return java.util.Arrays.stream(values())
                    .filter(k -> k.id().equals(id))
                    .findFirst();
        }
    }
}
