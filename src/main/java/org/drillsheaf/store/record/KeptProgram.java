package org.drillsheaf.store.record;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/**
 * One version of a client's program.
 *
 * @param visit the date it was built for
 * @param version from 1 for each visit; a program is never changed, only followed by a new version
 * @param yaml as {@code ProgramYaml} wrote it, for {@code ProgramReader}
 * @param signedBy the coach who checked it
 */
public record KeptProgram(
        UUID key,
        UUID client,
        LocalDate visit,
        int version,
        String yaml,
        String savedBy,
        Instant savedAt,
        Optional<String> signedBy,
        Optional<Instant> signedAt) {}
