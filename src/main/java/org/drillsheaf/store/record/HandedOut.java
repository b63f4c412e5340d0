package org.drillsheaf.store.record;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/**
 * A document that was handed out.
 *
 * @param program key of the program it shows; empty for a referral note
 * @param kind for example {@code client-handout}
 * @param date printed on it
 * @param drawnBy version of the program that drew it: the same one draws the same bytes again from the frozen inputs, a later
 *     one prints the stored file
 * @param pdfHash SHA-256 of the PDF
 * @param inputHashes name of each frozen input to its SHA-256
 */
public record HandedOut(
        UUID key,
        UUID client,
        Optional<UUID> program,
        String kind,
        LocalDate date,
        String language,
        String paper,
        String drawnBy,
        String pdfHash,
        Map<String, String> inputHashes,
        String by,
        Instant at) {

    public HandedOut {
        inputHashes = java.util.Collections.unmodifiableMap(new TreeMap<>(inputHashes));
    }

    /**
     * What is handed over to be kept.
     *
     * @param inputs everything the document was drawn from: texts, poses, settings, house style, by a name of the caller's
     */
    public record Draft(
            UUID client,
            Optional<UUID> program,
            String kind,
            LocalDate date,
            String language,
            String paper,
            String drawnBy,
            Map<String, byte[]> inputs,
            byte[] pdf) {
        public Draft {
            inputs = java.util.Collections.unmodifiableMap(new TreeMap<>(inputs));
        }
    }
}
