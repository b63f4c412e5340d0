package org.drillsheaf.screen;

import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Saying.Joint;
import org.drillsheaf.saying.Saying.Name;
import org.drillsheaf.screen.rule.Truth;

/**
 * What the value of one test, on one side where it has sides, means.
 *
 * @param word adds which way it is limited or beyond: {@code wide}, {@code narrow}, {@code swayed}, {@code lax}
 * @param limited whether the value misses its cut-off by at least one error; rules read this
 * @param beyond whether the value passes its upper mark by at least one error; rules read this
 * @param measurement what was measured; empty when nothing was
 * @param values what was measured, for example {@code −9°}; empty when there is nothing
 * @param reason why it is so, said: the cut-off and its error, pain, or what bars the test
 */
public record Finding(
        MovementTest test,
        Optional<Side> side,
        FindingKind kind,
        Optional<String> word,
        Truth limited,
        Truth beyond,
        Optional<Measurement> measurement,
        Saying values,
        Saying reason) {

    public Truth free() {
        return limited.not();
    }

    /** True when a further measurement could tell more than this one does. */
    public boolean isOpen() {
        return limited.isUnknown() || beyond.isUnknown();
    }

    /** One line for a coach, for example {@code Side-lying thigh drop, left: −9°, limited (passes at −23° or less, error 3°)}. */
    public Saying words() {
        return Phrases.withValues(
                Saying.phrase("finding.of")
                        .with("test", place())
                        .with("finding", Saying.joined(Joint.COMMA, values, kindWords())),
                reason);
    }

    /** The test with its side. */
    public Saying place() {
        return test.saidName(side);
    }

    /** The kind with its word, for example {@code limited, wide}. */
    public Saying kindWords() {
        boolean perhaps = kind == FindingKind.FULL && beyond.isUnknown();
        return Saying.joined(
                Joint.COMMA,
                kind.words(),
                word.<Saying>map(w -> Saying.name(Name.Kind.WORD, w)).orElse(Saying.NOTHING),
                perhaps ? Saying.phrase("finding.perhaps-beyond") : Saying.NOTHING);
    }
}
