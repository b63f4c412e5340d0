package org.drillsheaf.screen;

import org.drillsheaf.saying.Saying;

/**
 * The one test that would settle most.
 *
 * @param bits expected drop of uncertainty over the open presentations, in bits
 * @param repeat true when it was taken and lies at the line
 * @param minutes whole minutes it takes
 * @param reason why this one
 */
public record NextTest(MovementTest test, double bits, boolean repeat, int minutes, Saying reason) {

    /**
     * A question in place of a test that is barred for this client.
     *
     * @param key under which the answer is written
     */
    public record StandInQuestion(MovementTest barredTest, String key, String question) {}
}
