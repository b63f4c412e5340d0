package org.drillsheaf.desk.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.NextStep;
import org.drillsheaf.screen.Norm;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Verdict;

/**
 * The trade's own words in the language of the interface. In English they are those of the house's files; in another language
 * what has no words there stays English, so that nothing is ever nameless. Immutable.
 */
public final class TradeWords {
    private final Words words;
    private final boolean isEnglish;

    public TradeWords(Words words) {
        this.words = words;
        this.isEnglish = words.language().equals("en");
    }

    /** The coach's name of a test; in another language the one that stands on paper. */
    public String test(MovementTest test) {
        return isEnglish ? test.name() : test.names().client().best(List.of(words.language(), "en"));
    }

    /** What a value means, for example {@code limited, wide}. */
    public String kind(Finding finding) {
        boolean perhaps = finding.kind() == FindingKind.FULL && finding.beyond().isUnknown();
        return isEnglish
                ? finding.kindWords()
                : words.text("finding." + id(finding.kind()))
                        + finding.word()
                                .map(w -> ", " + own("finding-word." + w, w))
                                .orElse("")
                        + (perhaps ? ", " + words.text("finding-perhaps") : "");
    }

    /** Name of a part of a value that is taken in two, for example {@code hip ahead}. */
    public String part(Norm.Pair.Part part) {
        return isEnglish ? part.name() : own("part." + part.id(), part.name());
    }

    public String step(NextStep step) {
        return words.text("step." + id(step));
    }

    /** Name of a presentation with its side. */
    public String presentation(PresentationReading presentation) {
        return isEnglish
                ? presentation.name()
                : own(
                                "presentation." + presentation.id(),
                                presentation.presentation().name())
                        + presentation
                                .side()
                                .map(s -> ", " + words.text("side.of." + s.id()))
                                .orElse("");
    }

    /** A verdict with its remarks, for example {@code Open, leaning}. */
    public String verdict(PresentationReading presentation) {
        String remark = presentation.mixed() ? "mixed" : presentation.leaning() ? "leaning" : "";
        String strength = presentation.verdict() == Verdict.SUPPORTED ? presentation.clear() ? "clear" : "likely" : "";
        return words.text("verdict." + id(presentation.verdict()))
                + Optional.of(remark)
                        .filter(r -> !r.isEmpty())
                        .map(r -> ", " + words.text("verdict-remark." + r))
                        .orElse("")
                + Optional.of(strength)
                        .filter(r -> !r.isEmpty())
                        .map(r -> ", " + words.text("verdict-remark." + r))
                        .orElse("");
    }

    /** Name of a phase, as the house calls it. */
    public String phase(Phase phase, Vocabulary vocabulary) {
        return vocabulary.phases().row(phase).name().best(List.of(words.language(), "en"));
    }

    private String own(String key, String otherwise) {
        return words.has(key) ? words.text(key) : otherwise;
    }

    private static String id(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
