package org.drillsheaf.screen;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;
import org.drillsheaf.client.Sex;
import org.drillsheaf.saying.Saying;

/** What a value is compared with. A cut-off sorts movements for choosing drills; it is no medical norm. */
public sealed interface Norm {

    /**
     * A number that holds for some ages and one sex or both.
     *
     * @param fromAge first age in years for which it holds
     * @param toAge last age for which it holds
     */
    record Mark(int fromAge, int toAge, Optional<Sex> sex, double value, Source source) {

        boolean fits(int age, Sex who) {
            return age >= fromAge && age <= toAge && sex.map(s -> s == who).orElse(true);
        }
    }

    /**
     * One cut-off: the fuller the movement, the higher (or lower) the value.
     *
     * @param higherIsFuller whether a larger value is more movement
     * @param beyond marks from which it is more than expected; may be empty
     */
    record Threshold(boolean higherIsFuller, List<Mark> cutoffs, List<Mark> beyond) implements Norm {
        public Threshold {
            cutoffs = List.copyOf(cutoffs);
            beyond = List.copyOf(beyond);
        }
    }

    /** An expected range; outside it is limited, with a word for each end. */
    record Range(List<Mark> low, List<Mark> high, String lowWord, String highWord) implements Norm {
        public Range {
            low = List.copyOf(low);
            high = List.copyOf(high);
        }
    }

    /** Two values that are limited together when both reach their marks. */
    record Pair(String word, Part first, Part second) implements Norm {
        /** One of the two, with the mark it must reach. */
        public record Part(String id, LocalText name, double mark, Source source) {
            /** The name, to be said in any language. */
            public Saying saidName() {
                return Saying.name(Saying.Name.Kind.PART, id);
            }
        }

        public List<Part> parts() {
            return List.of(first, second);
        }
    }

    /**
     * A count of points.
     *
     * @param word added to the finding at the cut-off
     * @param questions keys of the questions that can make up for one missing point
     * @param questionsNeeded number of yes among them that makes up for it
     */
    record Count(String word, List<Mark> cutoffs, List<String> items, List<String> questions, int questionsNeeded)
            implements Norm {
        public Count {
            cutoffs = List.copyOf(cutoffs);
            items = List.copyOf(items);
            questions = List.copyOf(questions);
        }
    }

    /** A value to look at, without a cut-off. */
    record ReferenceOnly() implements Norm {}
}
