package org.drillsheaf.client;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.YamlNode;

/**
 * One date at the clinic.
 *
 * @param safety answer by id of the safety question; a question that is missing was not answered
 * @param observed what the coach has seen or been told, by key; a key that is missing was not observed
 * @param measuredBy who measured, when it was not the client's own coach
 * @param screen the values as written, for the package that knows the tests
 * @param coach the coach's own decisions as written, for the package that knows goals and drills
 * @param declined conditions that follow from the screen and were declined by the coach: condition id to reason
 * @param handoutNote the coach's own words to the client, printed in the handout; never blank
 * @param line where the visit begins in the client's file
 */
public record Visit(
        LocalDate date,
        Map<String, SafetyAnswer> safety,
        Map<String, Boolean> observed,
        Optional<String> measuredBy,
        Optional<Appointment> next,
        PracticeLog log,
        Optional<YamlNode> screen,
        Optional<YamlNode> coach,
        Map<String, String> declined,
        Optional<String> handoutNote,
        int line) {

    public Visit {
        safety = Map.copyOf(safety);
        observed = Map.copyOf(observed);
        declined = Map.copyOf(declined);
    }
}
