package org.drillsheaf.desk.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drillsheaf.client.PracticeLog;
import org.drillsheaf.course.Course;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.screen.ChangeScale;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingStrip;
import org.drillsheaf.screen.Measurement;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.TestChange;

/** What has changed from visit to visit. Knows no toolkit. */
public final class ProgressModel {
    private final ClientCase client;

    public ProgressModel(ClientCase client) {
        this.client = client;
    }

    public ClientCase client() {
        return client;
    }

    /** One value of a test at a visit. */
    public record Point(LocalDate date, double value, String words, String kind) {}

    /**
     * The values of one test on one side.
     *
     * @param error the error of one measurement, in the test's unit; 0 when there is none
     * @param aim the cut-off
     * @param change what the last two visits show; empty when it is not known
     */
    public record Line(
            MovementTest test,
            Optional<org.drillsheaf.Side> side,
            List<Point> points,
            double error,
            OptionalDouble aim,
            boolean lowerIsFuller,
            Optional<TestChange> change) {}

    private Vocabulary vocabulary() {
        return client.evaluator().knowledge().vocabulary();
    }

    /** The trade's words in the language of the window. */
    TradeWords trade() {
        return new TradeWords(client.workplace().words(), vocabulary());
    }

    public Optional<Course> course() {
        return client.evaluation().get().flatMap(Evaluation::course);
    }

    /** Every test and side that was measured at two visits or more. */
    public List<Line> lines() {
        Optional<Course> course = course().filter(c -> c.stops().size() > 1);
        if (course.isEmpty()) {
            return List.of();
        }
        TradeWords trade = trade();
        List<Line> lines = new ArrayList<>();
        for (MovementTest test : vocabulary().reading().battery().tests().values()) {
            for (Optional<org.drillsheaf.Side> side : test.places()) {
                List<Point> points = points(course.get(), test, side, trade);
                if (points.size() > 1) {
                    lines.add(line(course.get(), test, side, points));
                }
            }
        }
        return lines;
    }

    private static List<Point> points(
            Course course, MovementTest test, Optional<org.drillsheaf.Side> side, TradeWords trade) {
        List<Point> points = new ArrayList<>();
        for (Course.Stop stop : course.stops()) {
            LocalDate date = stop.visit().visit().date();
            stop.visit().reading().finding(test.id(), side).ifPresent((Finding f) -> f.measurement()
                    .filter(m -> m.date().equals(date))
                    .flatMap(Measurement::value)
                    .ifPresent(v -> points.add(new Point(date, v, trade.say(f.values()), trade.kind(f)))));
        }
        return points;
    }

    private static Line line(Course course, MovementTest test, Optional<org.drillsheaf.Side> side, List<Point> points) {
        var now = course.last().visit();
        ChangeScale scale = ChangeScale.of(now.client(), now.reading().age(), test);
        double error = FindingStrip.of(now.client(), now.reading().age(), test)
                .map(s -> s.line() * test.step().doubleValue())
                .orElse(0.0);
        Optional<TestChange> change = course.last()
                .change()
                .flatMap(c -> c.comparison().change(test.id(), side, Optional.empty()))
                .filter(c -> c.kind() != TestChange.Kind.NOT_KNOWN);
        return new Line(test, side, points, error, scale.aim(), scale.lowerIsFuller(), change);
    }

    /** What the client told about the practice before each visit, oldest first. */
    public List<PracticeLog> logs() {
        return course().map(c ->
                        c.stops().stream().map(s -> s.visit().visit().log()).toList())
                .orElse(List.of());
    }
}
