package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillsheaf.saying.Saying;

/**
 * What one program is worse by than another, level by level. The first level that is not zero decides; later ones only tell.
 *
 * @param coverage weighted coverage that is missing
 * @param minutes minutes under the target
 * @param changes drills that are new or gone against the program before
 * @param positionChanges changes of position in a session
 * @param repeats drills carried over beyond what is asked
 * @param equipment pieces of equipment in a session
 */
public record Cost(int coverage, int minutes, int changes, int positionChanges, int repeats, int equipment) {

    public static final Cost NONE = new Cost(0, 0, 0, 0, 0, 0);

    public Cost minus(Cost other) {
        return new Cost(
                coverage - other.coverage,
                minutes - other.minutes,
                changes - other.changes,
                positionChanges - other.positionChanges,
                repeats - other.repeats,
                equipment - other.equipment);
    }

    /** One clause for people, for example {@code 3 points of weighted coverage less, 1 change of position more}. */
    public Saying words() {
        List<Saying> parts = parts();
        return parts.isEmpty() ? Saying.phrase("cost.nothing") : Saying.joined(Saying.Joint.COMMA, parts);
    }

    private List<Saying> parts() {
        List<Saying> parts = new ArrayList<>();
        each((level, difference, moreIsLess) -> {
            boolean less = moreIsLess == (difference > 0);
            parts.add(Saying.phrase(less ? "cost.less" : "cost.more")
                    .with("what", Saying.phrase("cost." + level).with("count", Math.abs(difference))));
        });
        return parts;
    }

    /** The first level of {@link #words}, which decides; what the later ones come to is known only at the end of a search. */
    Saying decisive() {
        return parts().stream().findFirst().orElse(Saying.phrase("cost.nothing"));
    }

    /** Whether the first level that is not zero is better than it was. */
    boolean isGain() {
        return IntStream.of(coverage, minutes, changes, positionChanges, repeats, equipment)
                        .filter(level -> level != 0)
                        .findFirst()
                        .orElse(0)
                < 0;
    }

    /** What a program leaves undone, for example {@code 12 points of weighted coverage missing, 3 minutes unused}. */
    Saying open() {
        return Saying.joined(
                Saying.Joint.COMMA,
                coverage == 0
                        ? Saying.phrase("open.every-goal")
                        : Saying.phrase("open.coverage").with("count", coverage),
                minutes == 0
                        ? Saying.phrase("open.every-minute")
                        : Saying.phrase("open.minutes").with("count", minutes));
    }

    /**
     * How much a program of this value could be better than the other, at the first level where they differ: what the later ones
     * could come to is then not known. For example {@code 3 points of weighted coverage}.
     */
    Saying gapTo(Cost other) {
        List<Saying> gaps = new ArrayList<>();
        other.minus(this)
                .each((level, difference, moreIsLess) ->
                        gaps.add(Saying.phrase("cost." + level).with("count", difference)));
        return gaps.isEmpty() ? Saying.phrase("cost.equipment").with("count", 0) : gaps.get(0);
    }

    private interface Level {
        void take(String level, int difference, boolean moreIsLess);
    }

    /** The levels that are not zero, in their order. */
    private void each(Level level) {
        take(level, "coverage", coverage, true);
        take(level, "minutes", minutes, true);
        take(level, "changes", changes, false);
        take(level, "positions", positionChanges, false);
        take(level, "repeats", repeats, false);
        take(level, "equipment", equipment, false);
    }

    private static void take(Level level, String name, int difference, boolean moreIsLess) {
        if (difference != 0) {
            level.take(name, difference, moreIsLess);
        }
    }

    /** From the builder's own count. */
    static Cost of(org.drillsheaf.program.build.Valuation value) {
        return new Cost(
                value.coverage(),
                value.minutes(),
                value.changes(),
                value.positions(),
                value.repeats(),
                value.equipment());
    }
}
