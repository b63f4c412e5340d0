package org.drillsheaf.handout.page;

import java.util.List;
import java.util.Optional;

/**
 * What a client takes to a clinician when the safety answers stop or hold the program.
 *
 * @param urgency how soon
 * @param answers the questions that were answered with yes or not sure
 * @param stopped whether a program that was under way is stopped; otherwise none was started
 * @param measured what was measured that day; may be empty
 */
public record ReferralNote(
        Frame frame,
        Urgency urgency,
        List<Answer> answers,
        boolean stopped,
        List<Measured> measured,
        Optional<String> born)
        implements Document {

    /** How soon somebody has to look at it. */
    public enum Urgency {
        EMERGENCY,
        TODAY,
        SOON
    }

    /**
     * @param question the words that were read out
     * @param answer {@code yes} or {@code not-sure}
     */
    public record Answer(String question, String answer, Urgency urgency) {}

    /** One value of the screen, with its side and unit in words. */
    public record Measured(String test, String value) {}

    public ReferralNote {
        answers = List.copyOf(answers);
        measured = List.copyOf(measured);
    }

    @Override
    public DocumentKind kind() {
        return DocumentKind.REFERRAL_NOTE;
    }
}
