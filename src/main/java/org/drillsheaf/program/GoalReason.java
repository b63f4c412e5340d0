package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillsheaf.saying.Saying;

/**
 * A reason for a drill that names a goal.
 *
 * @param goal id of the goal
 * @param strength 1 to 3, of the drill for the goal
 * @param because the findings that speak for the goal, or the phase that asks for it
 */
public record GoalReason(String goal, int strength, Saying because) {
    private static final String KEY = "why.serves";
    /** As it stood in programs before reasons were sayings: name of the goal, strength, and why. */
    private static final Pattern IN_WORDS = Pattern.compile("[^:]+, strength ([1-3]) of 3: (.+)");

    /** Empty when the reason names no goal. */
    public static Optional<GoalReason> of(Saying reason) {
        if (reason instanceof Saying.Phrase phrase
                && phrase.key().equals(KEY)
                && phrase.with().get("goal") instanceof Saying.Name goal
                && phrase.with().get("strength") instanceof Saying.Figure strength) {
            return Optional.ofNullable(phrase.with().get("because"))
                    .map(because -> new GoalReason(goal.id(), (int) strength.number(), because));
        }
        return Optional.empty();
    }

    /**
     * Reasons that an older program tells in plain words, with goal and strength as the same entry counts them. They stand in
     * one order; where number or strengths do not agree, all reasons stay in their words.
     */
    static List<Saying> told(List<Saying> reasons, List<Served> serves) {
        List<Served> named = serves.stream().filter(s -> s.adds() > 0).toList();
        List<Saying> told = new ArrayList<>();
        int next = 0;
        for (Saying reason : reasons) {
            Matcher words = IN_WORDS.matcher(plainWords(reason));
            if (!words.matches()) {
                told.add(reason);
                continue;
            }
            if (next == named.size() || named.get(next).strength() != Integer.parseInt(words.group(1))) {
                return reasons;
            }
            Served served = named.get(next++);
            told.add(new GoalReason(served.goal(), served.strength(), Saying.written(words.group(2))).saying());
        }
        return next == named.size() ? told : reasons;
    }

    private static String plainWords(Saying reason) {
        return reason instanceof Saying.Own own
                        && own.text().in(Saying.UNDETERMINED).isPresent()
                ? own.text().english()
                : "";
    }

    /** The same to be said. */
    public Saying saying() {
        return Saying.phrase(KEY)
                .with("goal", Saying.name(Saying.Name.Kind.GOAL, goal))
                .with("strength", strength)
                .with("because", because);
    }
}
