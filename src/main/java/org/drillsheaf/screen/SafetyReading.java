package org.drillsheaf.screen;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.client.SafetyAnswer;
import org.drillsheaf.saying.Saying;

/**
 * What the safety answers of a visit mean.
 *
 * @param stopping questions that stop everything, with their answers
 * @param holding questions that wait for a clinician's written word
 * @param unanswered questions still to be asked
 * @param released questions whose yes a clinician has answered in writing
 * @param advice what is advised before starting, sentences
 * @param suggestedConditions conditions that an answer points to and that are not in the client's file
 */
public record SafetyReading(
        SafetyStatus status,
        List<Flag> stopping,
        List<Flag> holding,
        List<SafetyQuestion> unanswered,
        List<Flag> released,
        Clearance clearance,
        List<Saying> advice,
        List<String> suggestedConditions) {

    /** A question with its answer. */
    public record Flag(SafetyQuestion question, SafetyAnswer answer, Saying words) {}

    /** What is advised before exercise begins; advice, not a gate. */
    public enum Clearance {
        NOT_NEEDED,
        RECOMMENDED,
        STOP_AND_SEEK
    }

    public SafetyReading {
        stopping = List.copyOf(stopping);
        holding = List.copyOf(holding);
        unanswered = List.copyOf(unanswered);
        released = List.copyOf(released);
        advice = List.copyOf(advice);
        suggestedConditions = List.copyOf(suggestedConditions);
    }

    /** True when a program may be built. */
    public boolean isClear() {
        return status == SafetyStatus.CLEAR;
    }

    /** True when a referral note is due: a yes or a not sure to a stop question. */
    public boolean needsReferralNote() {
        return !stopping.isEmpty();
    }

    /** How soon a clinician must be asked, over all stopping questions. */
    public Optional<SafetyQuestion.Urgency> urgency() {
        return stopping.stream().map(f -> f.question().urgency()).min(java.util.Comparator.naturalOrder());
    }
}
