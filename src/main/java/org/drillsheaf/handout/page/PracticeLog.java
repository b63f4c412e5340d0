package org.drillsheaf.handout.page;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;

/**
 * A grid to tick, week by week, until the next appointment.
 *
 * @param weeks the days of each week, seven each, the first one the day of the visit
 * @param rows the drills
 */
public record PracticeLog(Frame frame, List<Week> weeks, List<Row> rows, Optional<ClientHandout.Meeting> next)
        implements Document {
    /** Weeks of the grid when no appointment is set, and the most that find room. */
    private static final int USUAL_WEEKS = 4;

    /** @param days seven days in a row */
    public record Week(List<LocalDate> days) {
        public Week {
            days = List.copyOf(days);
        }
    }

    /**
     * One drill.
     *
     * @param language tag of the name
     * @param side the only side, where there is only one
     */
    public record Row(int number, String name, String language, Optional<Side> side) {}

    public PracticeLog {
        weeks = List.copyOf(weeks);
        rows = List.copyOf(rows);
    }

    /** The log that goes with a handout: from its date to the next appointment, at most four weeks. */
    public static PracticeLog of(ClientHandout handout) {
        LocalDate first = handout.frame().date();
        long days = handout.next()
                .map(n -> ChronoUnit.DAYS.between(first, n.date()))
                .orElse(7L * USUAL_WEEKS);
        int count = (int) Math.max(1, Math.min(USUAL_WEEKS, (days + 6) / 7));
        List<Week> weeks = new ArrayList<>();
        for (int week = 0; week < count; week++) {
            List<LocalDate> seven = new ArrayList<>();
            for (int day = 0; day < 7; day++) {
                seven.add(first.plusDays(7L * week + day));
            }
            weeks.add(new Week(seven));
        }
        return new PracticeLog(
                handout.frame(),
                weeks,
                handout.drills().stream().map(PracticeLog::row).toList(),
                handout.next());
    }

    private static Row row(DrillBlock drill) {
        return new Row(
                drill.number(),
                drill.name(),
                drill.language(),
                drill.dose().sides().equals("one-side") ? drill.dose().side() : Optional.empty());
    }

    @Override
    public DocumentKind kind() {
        return DocumentKind.PRACTICE_LOG;
    }
}
