package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.Source;
import org.drillsheaf.YamlNode;
import org.drillsheaf.saying.Saying;

/**
 * One movement test, as data.
 *
 * @param names name for the coach and, per language, for the client
 * @param sided whether left and right are measured apart
 * @param step smallest difference that is stored, in the test's unit
 * @param lowest smallest value that can be true; below it is a slip of the pen
 * @param highest largest value that can be true
 * @param marks yes-or-no marks that may stand beside the value
 * @param norm what the value is compared with
 * @param errors errors of one measurement; the clinic's own, where it has stored one, stands first
 * @param minutes whole minutes the test takes, both sides together
 * @param inShortSet whether it belongs to the short set
 * @param bars conditions under which the test is not taken
 * @param cares conditions under which it is taken with care, with the words for the coach
 * @param method how it is taken
 * @param goal id of the goal that a limited test on its own points to
 * @param standIn question that stands in for the test when it is barred
 * @param pose pose of the picture, as written, for the package that draws
 */
public record MovementTest(
        String id,
        Names names,
        boolean sided,
        Unit unit,
        BigDecimal step,
        double lowest,
        double highest,
        List<String> marks,
        Norm norm,
        List<MeasurementError> errors,
        int minutes,
        boolean inShortSet,
        List<Bar> bars,
        Map<String, LocalText> cares,
        Method method,
        Optional<String> goal,
        Optional<StandIn> standIn,
        List<Source> sources,
        Optional<YamlNode> pose) {

    /** Name for the coach and name for the client. */
    public record Names(LocalText coach, LocalText client) {}

    /**
     * How a test is taken.
     *
     * @param sign what plus and minus mean
     * @param steps in order
     * @param ends what ends the measurement; the value is read there
     * @param doubts what a coach should know about the numbers
     */
    public record Method(LocalText sign, List<LocalText> steps, LocalText ends, Optional<LocalText> doubts) {
        public Method {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A question that stands in for a test that may not be taken. A yes decides nothing; a no means that the client was never
     * beyond what is expected.
     *
     * @param id key of the answer
     * @param recordedWith id of the test with whose value the answer is stored
     */
    public record StandIn(String id, String recordedWith, LocalText question) {}

    public MovementTest {
        marks = List.copyOf(marks);
        errors = List.copyOf(errors);
        bars = List.copyOf(bars);
        cares = Map.copyOf(cares);
        sources = List.copyOf(sources);
    }

    /** The coach's name in English. */
    public String name() {
        return names.coach().english();
    }

    /** The coach's name; where a language has none, the one that clients read. */
    public LocalText nameByLanguage() {
        Map<String, String> all = new LinkedHashMap<>(names.client().byLanguage());
        all.putAll(names.coach().byLanguage());
        return new LocalText(all);
    }

    /** The name, to be said in any language. */
    public Saying saidName() {
        return Saying.name(Saying.Name.Kind.TEST, id);
    }

    /** The same with a side, where there is one. */
    public Saying saidName(Optional<Side> side) {
        return Phrases.named(saidName(), side);
    }

    /** Sides to measure: both for a sided test, else one place without a side. */
    public List<Optional<org.drillsheaf.Side>> places() {
        return sided
                ? List.of(Optional.of(org.drillsheaf.Side.LEFT), Optional.of(org.drillsheaf.Side.RIGHT))
                : List.of(Optional.empty());
    }
}
