package org.drillsheaf.desk.words;

import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Speech;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.NextStep;
import org.drillsheaf.screen.Norm;
import org.drillsheaf.screen.PresentationReading;

/**
 * The trade's own words, and everything that the reading and the builder have to say, in the language of the interface. What has
 * no words there is said in English, so that nothing is ever nameless. Immutable.
 */
public final class TradeWords {
    private final Speech speech;

    public TradeWords(Words words, Vocabulary vocabulary) {
        this.speech = vocabulary.speech(words.language());
    }

    public String say(Saying saying) {
        return speech.say(saying);
    }

    /** Words of the house's files. */
    public String words(LocalText text) {
        return say(Saying.own(text));
    }

    /** The saying as a sentence begins. */
    public String sentence(Saying saying) {
        return speech.opening(saying);
    }

    /** The coach's name of a test. */
    public String test(MovementTest test) {
        return say(test.saidName());
    }

    /** The same with a side, where there is one. */
    public String test(MovementTest test, Optional<Side> side) {
        return say(test.saidName(side));
    }

    /** What a value means, for example {@code limited, wide}. */
    public String kind(Finding finding) {
        return say(finding.kindWords());
    }

    /** Name of a part of a value that is taken in two, for example {@code hip ahead}. */
    public String part(Norm.Pair.Part part) {
        return say(part.saidName());
    }

    public String step(NextStep step) {
        return say(step.words());
    }

    /** Name of a presentation with its side. */
    public String presentation(PresentationReading presentation) {
        return say(presentation.name());
    }

    /** A verdict with its remarks, for example {@code Open, leaning}. */
    public String verdict(PresentationReading presentation) {
        return sentence(presentation.verdictWords());
    }

    /** Name of a phase, as the house calls it. */
    public String phase(Phase phase) {
        return say(phase.saidName());
    }
}
