package org.drillsheaf.store.upkeep;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.IsoFields;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/**
 * How often a backup is made while the record is in use, and which ones are kept.
 *
 * @param everyMinutes from one to the next, 5 to 10 080
 * @param newest so many of the newest are kept, 1 to 1 000
 * @param days for so many days back the last one of each day is kept, 0 to 366
 * @param weeks for so many weeks back the last one of each week is kept, 1 to 520; none is kept longer
 */
public record BackupPlan(int everyMinutes, int newest, int days, int weeks) {
    /** Name of the setting in the record. */
    public static final String SETTING = "backups";

    public static final BackupPlan USUAL = new BackupPlan(60, 12, 14, 8);

    public BackupPlan {
        within("everyMinutes", everyMinutes, 5, 10_080);
        within("newest", newest, 1, 1_000);
        within("days", days, 0, 366);
        within("weeks", weeks, 1, 520);
    }

    private static void within(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(name + " must lie between " + least + " and " + most);
        }
    }

    /** As the setting holds it. */
    public String text() {
        return "{every-minutes: " + everyMinutes + ", newest: " + newest + ", days: " + days + ", weeks: " + weeks
                + "}";
    }

    /** Reads what {@link #text} wrote; empty for anything else. */
    public static Optional<BackupPlan> parse(String text) {
        return YamlNode.parse(SETTING, text, new Problems()).flatMap(node -> {
            try {
                return Optional.of(new BackupPlan(
                        number(node, "every-minutes"),
                        number(node, "newest"),
                        number(node, "days"),
                        number(node, "weeks")));
            } catch (IllegalArgumentException e) {
                return Optional.empty();
            }
        });
    }

    private static int number(YamlNode node, String key) {
        return node.get(key)
                .map(n -> n.json().asInt(-1))
                .orElseThrow(() -> new IllegalArgumentException(key + " is missing"));
    }

    /** The longest that a backup is kept, as long as new ones are made. */
    public Duration longest() {
        return Duration.ofDays(Math.max(days, 7L * weeks));
    }

    /**
     * Those that may go.
     *
     * @param made when each backup was made
     * @return some of {@code made}, never the newest
     */
    public List<Instant> expired(List<Instant> made, Instant now) {
        List<Instant> fresh = made.stream()
                .sorted(Comparator.reverseOrder())
                .filter(time -> !time.isBefore(now.minus(longest())))
                .toList();
        Set<Instant> kept = new HashSet<>(fresh.subList(0, Math.min(newest, fresh.size())));
        keepLastOfEach(fresh, now.minus(Duration.ofDays(days)), day -> day, kept);
        keepLastOfEach(
                fresh,
                now.minus(Duration.ofDays(7L * weeks)),
                day -> day.get(IsoFields.WEEK_BASED_YEAR) * 100 + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR),
                kept);
        made.stream().max(Comparator.naturalOrder()).ifPresent(kept::add);
        return made.stream().filter(time -> !kept.contains(time)).sorted().toList();
    }

    private static void keepLastOfEach(
            List<Instant> newestFirst, Instant since, Function<LocalDate, Object> span, Set<Instant> kept) {
        Set<Object> seen = new HashSet<>();
        for (Instant time : newestFirst) {
            if (!time.isBefore(since)
                    && seen.add(span.apply(time.atOffset(ZoneOffset.UTC).toLocalDate()))) {
                kept.add(time);
            }
        }
    }
}
