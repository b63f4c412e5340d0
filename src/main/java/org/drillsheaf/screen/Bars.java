package org.drillsheaf.screen;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.drillsheaf.Side;
import org.drillsheaf.client.Answer;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.SafetyAnswer;
import org.drillsheaf.saying.Saying;

/**
 * Which tests this client must not take on this day. What is not known counts as barred.
 *
 * @param recent answers that tell of surgery, a fracture or a dislocation
 */
record Bars(List<ClientCondition> conditions, List<SafetyAnswer> recent, LocalDate day) {

    /** Why the test is not taken on this side; empty when it may be taken. */
    Optional<Saying> reason(MovementTest test, Optional<Side> side) {
        return test.bars().stream()
                .filter(bar -> bars(bar, test, side))
                .map(bar -> Phrases.withValues(
                        Saying.own(bar.reason()),
                        bar.condition()
                                .<Saying>map(c -> Saying.name(Saying.Name.Kind.CONDITION, c))
                                .orElse(Saying.NOTHING)))
                .findFirst();
    }

    /** True when every place of the test is barred. */
    boolean barsAll(MovementTest test) {
        return test.places().stream().allMatch(side -> reason(test, side).isPresent());
    }

    private boolean bars(Bar bar, MovementTest test, Optional<Side> side) {
        if (bar.condition().isEmpty()) {
            return recent.stream().anyMatch(answer -> bars(bar, answer));
        }
        return conditions.stream()
                .filter(c -> c.id().equals(bar.condition().get()))
                .anyMatch(c -> bars(bar, c, test, side));
    }

    private boolean bars(Bar bar, ClientCondition condition, MovementTest test, Optional<Side> side) {
        boolean lifted =
                !bar.unless().isEmpty() && bar.unless().entrySet().stream().allMatch(e -> isSet(condition, e));
        boolean fits = bar.when().entrySet().stream()
                .allMatch(e -> condition.setting(e.getKey()).isEmpty() || isSet(condition, e));
        boolean oneSided =
                test.sided() && !bar.bothSides() && !condition.sides().isEmpty();
        boolean concernsSide =
                !oneSided || side.map(condition.sides()::contains).orElse(true);
        return !lifted && fits && concernsSide && inTime(bar, condition);
    }

    private static boolean isSet(ClientCondition condition, Map.Entry<String, String> wanted) {
        Optional<String> written = condition.setting(wanted.getKey());
        return written.isPresent() && plain(written.get()).equals(plain(wanted.getValue()));
    }

    private static String plain(String setting) {
        return switch (setting) {
            case "yes" -> "true";
            case "no" -> "false";
            default -> setting;
        };
    }

    private boolean inTime(Bar bar, ClientCondition condition) {
        OptionalLong weeks = condition.weeksOn(day);
        if (bar.fromWeek().isPresent()) {
            OptionalLong week =
                    condition.setting("week").filter(w -> w.matches("\\d{1,3}")).isPresent()
                            ? OptionalLong.of(
                                    Long.parseLong(condition.setting("week").orElseThrow()))
                            : weeks;
            return week.isEmpty() || week.getAsLong() >= bar.fromWeek().getAsInt();
        }
        return bar.weeks().isEmpty()
                || weeks.isEmpty()
                || weeks.getAsLong() < bar.weeks().getAsInt();
    }

    private boolean bars(Bar bar, SafetyAnswer answer) {
        boolean samePart = answer.part().isEmpty()
                || bar.recentParts().contains(answer.part().get());
        boolean inTime = answer.date().isEmpty()
                || bar.weeks().isEmpty()
                || ChronoUnit.WEEKS.between(answer.date().get(), day)
                        < bar.weeks().getAsInt();
        return answer.answer() != Answer.NO && samePart && inTime;
    }
}
