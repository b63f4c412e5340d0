package org.drillsheaf.screen;

import java.util.Optional;

/**
 * The one test that would settle most.
 *
 * @param bits expected drop of uncertainty over the open presentations, in bits
 * @param repeat true when it was taken and lies at the line
 * @param minutes whole minutes it takes
 * @param reason in words
 * @param standIn the question to ask instead of a better test that is barred for this client
 */
public record NextTest(
        MovementTest test, double bits, boolean repeat, int minutes, String reason, Optional<StandInQuestion> standIn) {

    /** A question in place of a barred test. */
    public record StandInQuestion(MovementTest barredTest, String key, String question) {}
}
