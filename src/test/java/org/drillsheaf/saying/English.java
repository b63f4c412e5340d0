package org.drillsheaf.saying;

import java.nio.file.Path;
import java.util.List;
import org.drillsheaf.Problems;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.program.VocabularyReader;

/** Says in English, with the real house's names, what the core has to say. */
public final class English {
    private static final Vocabulary VOCABULARY =
            VocabularyReader.read(Path.of(""), new Problems()).orElseThrow();
    private static final Speech SPEECH = VOCABULARY.speech("en");

    private English() {}

    public static String said(Saying saying) {
        return SPEECH.say(saying);
    }

    /** The same in another language of the house. */
    public static String saidIn(String language, Saying saying) {
        return VOCABULARY.speech(language).say(saying);
    }

    public static List<String> said(List<? extends Saying> sayings) {
        return SPEECH.say(sayings);
    }
}
