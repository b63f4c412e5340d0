package org.drillsheaf.handout.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.handout.paint.Picture;

/**
 * "What has changed": every test by side, against the aim and what counts as a real change.
 *
 * @param visits dates of the visits, oldest first
 * @param better tests and sides that changed for real, for the better
 * @param rows the tests in the order of the battery
 * @param step {@code advance}, {@code stay}, {@code step-back} or {@code refer}
 * @param phase number of the phase to work on from now
 */
public record ProgressReport(
        Frame frame,
        List<LocalDate> visits,
        int better,
        int same,
        int less,
        List<Row> rows,
        List<Numbers> numbers,
        String step,
        int phase,
        String phaseName,
        Optional<ClientHandout.Meeting> next)
        implements Document {

    /** One test with its panels: left and right, or one for both. */
    public record Row(String test, boolean sided, List<Panel> panels) {
        public Row {
            panels = List.copyOf(panels);
        }
    }

    /**
     * One test and side.
     *
     * @param verdict {@code better}, {@code no-real-change} or {@code worse}
     * @param by how much, without a sign
     * @param change smallest real change
     * @param beforeAt where the first value stands, millimetres from the left edge of the chart
     * @param nowAt where the last value stands
     */
    public record Panel(
            String side,
            String before,
            double beforeAt,
            String now,
            double nowAt,
            String verdict,
            String by,
            String change,
            Picture chart) {}

    /**
     * One test in the table that says the same without a chart.
     *
     * @param values a visit each; of a test with sides left before right
     */
    public record Numbers(String test, boolean sided, List<List<String>> values, String aim, String change) {
        public Numbers {
            values = List.copyOf(values);
        }
    }

    public ProgressReport {
        visits = List.copyOf(visits);
        rows = List.copyOf(rows);
        numbers = List.copyOf(numbers);
    }

    @Override
    public DocumentKind kind() {
        return DocumentKind.PROGRESS_REPORT;
    }
}
