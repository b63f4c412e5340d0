package org.drillsheaf.handout;

import java.util.Optional;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.ReferralNote;
import org.drillsheaf.saying.Speech;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.screen.SafetyReading;

/** Turns safety answers that stop or hold a program into a note for a clinician. */
final class ReferralNoteMaker {
    private ReferralNoteMaker() {}

    static ReferralNote note(DocumentOrder order, Frame frame, Speech speech) {
        DocumentOrder.Seen now = order.now();
        SafetyReading safety = now.reading().safety();
        java.util.List<String> languages = java.util.List.of(frame.language());
        return new ReferralNote(
                frame,
                urgency(safety.urgency().orElse(SafetyQuestion.Urgency.TODAY)),
                safety.stopping().stream()
                        .map(flag -> new ReferralNote.Answer(
                                flag.question().text().best(languages),
                                flag.answer().answer().id(),
                                urgency(flag.question().urgency())))
                        .toList(),
                order.visits().size() > 1,
                now.reading().findings().stream()
                        .filter(f -> f.kind() != FindingKind.NOT_TESTED)
                        .map(f -> measured(f, speech))
                        .toList(),
                Optional.of(String.valueOf(order.client().born().year())));
    }

    private static ReferralNote.Measured measured(Finding finding, Speech speech) {
        return new ReferralNote.Measured(speech.say(finding.place()), speech.say(finding.values()));
    }

    private static ReferralNote.Urgency urgency(SafetyQuestion.Urgency urgency) {
        return switch (urgency) {
            case NOW -> ReferralNote.Urgency.EMERGENCY;
            case TODAY -> ReferralNote.Urgency.TODAY;
            case SOON, NONE -> ReferralNote.Urgency.SOON;
        };
    }
}
