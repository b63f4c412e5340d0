package org.drillsheaf.screen;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;

/**
 * What the findings of one visit say about one presentation, on one side where it has sides.
 *
 * @param mixed open although nothing it needs is unknown: the findings disagree
 * @param leaning open, and the only name that one more test could settle in its favour
 * @param clear held with much in support; only a word, never a verdict
 * @param openBecause what keeps it open, one clause each
 */
public record PresentationReading(
        Presentation presentation,
        Optional<Side> side,
        Verdict verdict,
        boolean mixed,
        boolean leaning,
        boolean clear,
        List<Evidence> evidence,
        List<Saying> openBecause) {

    public PresentationReading {
        evidence = List.copyOf(evidence);
        openBecause = List.copyOf(openBecause);
    }

    public String id() {
        return presentation.id();
    }

    /** Name on screen, for example {@code One side forward, left}. */
    public Saying name() {
        return side.<Saying>map(s -> Saying.phrase("name.presentation-side")
                        .with("name", presentation.saidName())
                        .with("side", Phrases.side(s)))
                .orElse(presentation.saidName());
    }

    /** For example {@code Extension-dominant, both sides (holds, likely)}. */
    public Saying nameWithVerdict() {
        return Phrases.withValues(name(), verdictWords());
    }

    /** The verdict with its remarks, for example {@code open, leaning}. */
    public Saying verdictWords() {
        boolean held = verdict == Verdict.SUPPORTED;
        String strength = clear ? "clear" : "likely";
        String remark = mixed ? "mixed" : leaning ? "leaning" : "";
        return Saying.joined(
                Joint.COMMA,
                verdict.words(),
                remark.isEmpty() ? Saying.NOTHING : Saying.phrase("verdict." + remark),
                held ? Saying.phrase("verdict." + strength) : Saying.NOTHING);
    }

    public List<Evidence> evidence(Evidence.Kind kind) {
        return evidence.stream().filter(e -> e.kind() == kind).toList();
    }

    PresentationReading withLeaning(boolean value) {
        return new PresentationReading(presentation, side, verdict, mixed, value, clear, evidence, openBecause);
    }

    boolean isOneOf(Set<String> ids) {
        return ids.contains(id());
    }
}
