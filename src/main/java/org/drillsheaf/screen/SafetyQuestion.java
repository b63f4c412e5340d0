package org.drillsheaf.screen;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * One safety question.
 *
 * @param id a word, for example {@code chest}
 * @param text in the client's words
 * @param effect what a yes or a not sure does
 * @param urgency how soon a clinician must be asked
 * @param action what the coach does on a yes, one sentence
 * @param concern what the question is about, in a few words for the referral note
 * @param askedIf when the question is asked at all
 * @param asksPartAndDate whether a yes must name the body part and the date
 * @param isSymptom whether a yes counts as a heart, metabolic or kidney symptom in the advice before exercise
 * @param suggests condition that a yes points to, for the coach to enter
 */
public record SafetyQuestion(
        String id,
        LocalText text,
        Effect effect,
        Urgency urgency,
        LocalText action,
        LocalText concern,
        AskedIf askedIf,
        boolean asksPartAndDate,
        boolean isSymptom,
        Optional<String> suggests,
        Source source) {

    /** What a yes or a not sure does. */
    public enum Effect {
        STOP,
        HOLD,
        /** Blocks nothing; feeds the advice before exercise and the list of conditions to ask about. */
        ADVISE;

        public static Optional<Effect> of(String id) {
            return Arrays.stream(values())
                    .filter(e -> e.name().toLowerCase(Locale.ROOT).equals(id))
                    .findFirst();
        }
    }

    /** How soon a clinician must be asked. */
    public enum Urgency {
        NOW("emergency now"),
        TODAY("clinician today"),
        SOON("clinician"),
        NONE("");

        private final String words;

        Urgency(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public static Optional<Urgency> of(String id) {
            return Arrays.stream(values())
                    .filter(u -> u.name().toLowerCase(Locale.ROOT).equals(id))
                    .findFirst();
        }
    }

    /**
     * When a question is asked. With no condition and no age it is asked of everyone.
     *
     * @param conditions asked of clients with one of these
     * @param upToAge asked up to this age, the age itself included
     * @param fromAge asked from this age on; with {@code upToAge} too, one of the two is enough
     */
    public record AskedIf(Set<String> conditions, OptionalInt upToAge, OptionalInt fromAge) {
        public static final AskedIf ALWAYS = new AskedIf(Set.of(), OptionalInt.empty(), OptionalInt.empty());

        public AskedIf {
            conditions = Set.copyOf(conditions);
        }

        /**
         * @param youngest the least the client's age can be; a year of birth alone leaves one year open
         * @param oldest the most it can be
         */
        public boolean holds(int youngest, int oldest, Set<String> conditionsOfClient) {
            boolean fitsCondition = conditions.isEmpty() || conditions.stream().anyMatch(conditionsOfClient::contains);
            boolean anyAge = upToAge.isEmpty() && fromAge.isEmpty();
            boolean young = upToAge.isPresent() && youngest <= upToAge.getAsInt();
            boolean old = fromAge.isPresent() && oldest >= fromAge.getAsInt();
            return fitsCondition && (anyAge || young || old);
        }
    }

    /** The words in several languages; English first when nothing fits. */
    public String text(List<String> languages) {
        return text.best(languages);
    }
}
