package org.drillsheaf.client;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The person a program is made for.
 *
 * @param called the name used on paper
 * @param sex empty when not given
 * @param massKilograms empty when not given
 * @param languages language tags, best first, at least one
 * @param coach name of the coach
 * @param equipment ids of what is at hand at home; the floor is always there and not listed
 * @param avoid ids of body positions to leave out
 * @param wish id of the goal the client would like most
 */
public record Client(
        String id,
        String name,
        String called,
        Born born,
        Optional<Sex> sex,
        double statureCentimetres,
        OptionalDouble massKilograms,
        List<String> languages,
        Paper paper,
        Print print,
        String coach,
        Set<String> equipment,
        Set<String> avoid,
        int minutesPerSession,
        int sessionsPerWeek,
        Optional<String> wish) {

    public Client {
        languages = List.copyOf(languages);
        equipment = Set.copyOf(equipment);
        avoid = Set.copyOf(avoid);
    }

    /** The same person, addressed in these languages, best first. */
    public Client speaking(List<String> others) {
        return changed(others, equipment, minutesPerSession);
    }

    /** The same person with other things at hand and another length of a session. */
    public Client with(Set<String> atHand, int minutes) {
        return changed(languages, atHand, minutes);
    }

    private Client changed(List<String> tongues, Set<String> atHand, int minutes) {
        return new Client(
                id,
                name,
                called,
                born,
                sex,
                statureCentimetres,
                massKilograms,
                tongues,
                paper,
                print,
                coach,
                atHand,
                avoid,
                minutes,
                sessionsPerWeek,
                wish);
    }
}
