package org.drillsheaf.client;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What was answered to one safety question at one visit.
 *
 * @param part the body part that a yes names, for example {@code hip}
 * @param date the date that a yes names
 * @param release a clinician's written word about this answer
 * @param line where it stands in the client's file
 */
public record SafetyAnswer(
        Answer answer, Optional<String> part, Optional<LocalDate> date, Optional<Release> release, int line) {

    public static SafetyAnswer of(Answer answer) {
        return new SafetyAnswer(answer, Optional.empty(), Optional.empty(), Optional.empty(), 0);
    }
}
