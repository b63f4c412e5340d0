package org.drillsheaf.client;

import java.time.LocalDate;

/**
 * A clinician's written word that lets something go on.
 *
 * @param by who wrote it
 * @param words what was written, in their words
 */
public record Release(String by, LocalDate date, String words) {}
