package org.drillsheaf.desk.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.SafetyQuestion;

/**
 * What nobody has entered yet.
 *
 * @param needed safety questions without which nothing is built
 * @param helpful tests that would help, the one that would settle most first
 */
public record Missing(List<SafetyQuestion> needed, List<MovementTest> helpful) {
    public static final Missing NOTHING = new Missing(List.of(), List.of());

    public Missing {
        needed = List.copyOf(needed);
        helpful = List.copyOf(helpful);
    }

    public static Missing of(Optional<Reading> reading) {
        return reading.map(Missing::of).orElse(NOTHING);
    }

    private static Missing of(Reading reading) {
        List<MovementTest> helpful = new ArrayList<>();
        reading.nextTest().filter(n -> !n.repeat()).ifPresent(n -> helpful.add(n.test()));
        for (Finding finding : reading.findings()) {
            boolean untaken =
                    finding.kind() == FindingKind.NOT_TESTED && finding.test().inShortSet();
            if (untaken && !helpful.contains(finding.test()) && finding.reason().isEmpty()) {
                helpful.add(finding.test());
            }
        }
        return new Missing(reading.safety().unanswered(), helpful);
    }

    public boolean isNothing() {
        return needed.isEmpty() && helpful.isEmpty();
    }
}
