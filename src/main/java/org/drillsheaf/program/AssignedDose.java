package org.drillsheaf.program;

/**
 * How much of one drill the client does in one session.
 *
 * @param sets rounds
 * @param count what is counted: {@code breaths}, {@code repetitions}, {@code steps} or {@code minutes}
 * @param each how many of them in a round, for each side where sides take turns
 * @param holdSeconds longest steady work, 0 when there is none
 * @param restSeconds rest between rounds
 * @param effort 0 to 10
 * @param sides {@code both-together}, {@code each-side} or {@code one-side}
 */
public record AssignedDose(
        int sets, String count, int each, int holdSeconds, int restSeconds, int effort, String sides) {}
