package org.drillsheaf.exchange.zip;

/**
 * How much of a zip file is unpacked. Own settings, many times what our own files need.
 *
 * @param mostEntries number of entries
 * @param largestEntry bytes of one entry, unpacked
 * @param largestTotal bytes of all entries, unpacked
 */
public record ZipLimits(int mostEntries, long largestEntry, long largestTotal) {
    /** An entry may be so many times larger than its packed form; drills and sheets pack about ten to one. */
    static final long MOST_RATIO = 100;
    /** Small entries may pack better by chance. Bytes. */
    static final long RATIO_COUNTS_FROM = 200_000;
}
