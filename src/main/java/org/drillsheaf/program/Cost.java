package org.drillsheaf.program;

import java.util.stream.IntStream;

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

    /** One clause for people, for example {@code coverage 3 points less, one change of position more}. */
    public String words() {
        StringBuilder text = new StringBuilder();
        add(
                text,
                coverage,
                coverage == 1 || coverage == -1 ? "point of weighted coverage" : "points of weighted coverage",
                true);
        add(text, minutes, minutes == 1 || minutes == -1 ? "minute used" : "minutes used", true);
        add(
                text,
                changes,
                changes == 1 || changes == -1
                        ? "change against the program before"
                        : "changes against the program before",
                false);
        add(
                text,
                positionChanges,
                positionChanges == 1 || positionChanges == -1 ? "change of position" : "changes of position",
                false);
        add(text, repeats, repeats == 1 || repeats == -1 ? "repeated drill" : "repeated drills", false);
        add(text, equipment, equipment == 1 || equipment == -1 ? "piece of equipment" : "pieces of equipment", false);
        return text.length() == 0 ? "costs nothing" : text.toString();
    }

    /** The first level of {@link #words}, which decides; what the later ones come to is known only at the end of a search. */
    String decisive() {
        String words = words();
        int end = words.indexOf(", ");
        return end < 0 ? words : words.substring(0, end);
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
    String open() {
        String goals = coverage == 0
                ? "every goal is covered"
                : coverage + (coverage == 1 ? " point" : " points") + " of weighted coverage missing";
        String used =
                minutes == 0 ? "every minute used" : minutes + (minutes == 1 ? " minute" : " minutes") + " unused";
        return goals + ", " + used;
    }

    /**
     * How much a program of this value could be better than the other, at the first level where they differ: what the later ones
     * could come to is then not known. For example {@code 3 points of weighted coverage}.
     */
    String gapTo(Cost other) {
        if (coverage != other.coverage) {
            return count(other.coverage - coverage, "point of weighted coverage", "points of weighted coverage");
        }
        if (minutes != other.minutes) {
            return count(other.minutes - minutes, "minute used", "minutes used");
        }
        if (changes != other.changes) {
            return count(
                    other.changes - changes, "change against the program before", "changes against the program before");
        }
        if (positionChanges != other.positionChanges) {
            return count(other.positionChanges - positionChanges, "change of position", "changes of position");
        }
        if (repeats != other.repeats) {
            return count(other.repeats - repeats, "repeated drill", "repeated drills");
        }
        return count(other.equipment - equipment, "piece of equipment", "pieces of equipment");
    }

    private static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    private static void add(StringBuilder text, int difference, String noun, boolean moreIsLess) {
        if (difference == 0) {
            return;
        }
        if (text.length() > 0) {
            text.append(", ");
        }
        boolean less = moreIsLess == (difference > 0);
        text.append(Math.abs(difference)).append(' ').append(noun).append(less ? " less" : " more");
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
