package org.drillsheaf.screen;

/**
 * The one test that would settle most.
 *
 * @param bits expected drop of uncertainty over the open presentations, in bits
 * @param repeat true when it was taken and lies at the line
 * @param minutes whole minutes it takes
 * @param reason in words
 */
public record NextTest(MovementTest test, double bits, boolean repeat, int minutes, String reason) {

    /**
     * A question in place of a test that is barred for this client.
     *
     * @param key under which the answer is written
     */
    public record StandInQuestion(MovementTest barredTest, String key, String question) {}
}
