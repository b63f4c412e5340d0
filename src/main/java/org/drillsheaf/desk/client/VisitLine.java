package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.words.Words;

/** The visits of a client on a line that is drawn to scale in time. One visit is chosen; a planned one is dashed. */
public final class VisitLine extends Pane {
    /** Its height, in the style sheet too. */
    private static final double HEIGHT_EM = 4.6;

    private static final double COMPACT_EM = 2.5;

    private static final double COMPACT_INSET_EM = 0.6;

    private static final double ROOM_EM = 10.4;

    private final Words words;
    private final Consumer<LocalDate> chosen;
    private final List<Stop> stops = new ArrayList<>();
    private final ComboBox<LocalDate> choice = new ComboBox<>();
    private final Label next = new Label();
    private Map<LocalDate, String> names = Map.of();
    private boolean compact;
    private boolean showing;

    /** One place on the line. */
    private record Stop(
            LocalDate date,
            boolean planned,
            boolean current,
            Label top,
            Region button,
            Label below,
            Circle dot,
            Circle ring,
            Line line,
            Label weeks) {}

    public VisitLine(Words words, Consumer<LocalDate> chosen) {
        this.words = words;
        this.chosen = chosen;
        getStyleClass().add("visit-line");
        setAccessibleText(words.text("visits.name"));
        choice.setAccessibleText(words.text("visits.name"));
        choice.setConverter(new Named<>(date -> names.getOrDefault(date, words.day(date))));
        choice.setOnAction(e -> {
            if (!showing && choice.getValue() != null) {
                chosen.accept(choice.getValue());
            }
        });
        next.getStyleClass().add("second");
    }

    /** With little room the visits are a list to choose from, in one row. */
    void compact(boolean little) {
        compact = little;
        getStyleClass().remove("compact-line");
        if (little) {
            getStyleClass().add("compact-line");
        }
        fill();
    }

    private void fill() {
        getChildren().clear();
        if (compact) {
            getChildren().addAll(choice, next);
        } else {
            stops.forEach(s -> getChildren().addAll(s.line(), s.weeks()));
            stops.forEach(s -> {
                getChildren().addAll(s.ring(), s.dot(), s.below());
                getChildren().add(s.button());
            });
        }
        requestLayout();
    }

    /**
     * Shows visits.
     *
     * @param dates oldest first
     * @param planned the next appointment after the last visit
     */
    public void show(List<LocalDate> dates, LocalDate current, LocalDate today, Optional<LocalDate> planned) {
        stops.clear();
        Map<LocalDate, String> named = new HashMap<>();
        ToggleGroup group = new ToggleGroup();
        List<LocalDate> all = new ArrayList<>(dates);
        planned.filter(p -> dates.isEmpty() || p.isAfter(dates.get(dates.size() - 1)))
                .ifPresent(all::add);
        for (int i = 0; i < all.size(); i++) {
            LocalDate date = all.get(i);
            boolean future = i >= dates.size();
            boolean isCurrent = date.equals(current) && !future;
            String day = date.equals(today) ? words.text("visits.today", words.day(date)) : words.day(date);
            String kind = words.text(future ? "visits.planned" : i == 0 ? "visits.first" : "visits.again");
            named.put(date, day + ", " + kind);
            stops.add(stop(i, date, future, isCurrent, day, kind, group, i == 0 ? date : all.get(i - 1)));
        }
        names = named;
        showing = true;
        choice.getItems().setAll(dates);
        choice.setValue(current);
        showing = false;
        next.setText(
                all.size() > dates.size() ? words.text("visits.planned-for", words.day(all.get(all.size() - 1))) : "");
        fill();
    }

    private Stop stop(
            int index,
            LocalDate date,
            boolean planned,
            boolean current,
            String day,
            String kind,
            ToggleGroup group,
            LocalDate before) {
        Label below = Labels.text(kind, "small", current ? "bold" : "second");
        Label top = Labels.text(day, "small", current ? "bold" : "second");
        Region button;
        if (planned) {
            button = top;
        } else {
            ToggleButton toggle = new ToggleButton(day);
            toggle.getStyleClass().addAll("visit-dot", "small");
            toggle.setToggleGroup(group);
            toggle.setSelected(current);
            toggle.setAccessibleText(words.text("visits.visit", day, kind));
            toggle.setOnAction(e -> {
                toggle.setSelected(true);
                chosen.accept(date);
            });
            toggle.setOnKeyPressed(key -> {
                int step = key.getCode() == KeyCode.LEFT ? -1 : key.getCode() == KeyCode.RIGHT ? 1 : 0;
                int next = index + step;
                if (step != 0 && next >= 0 && next < stops.size()) {
                    stops.get(next).button().requestFocus();
                    key.consume();
                } else if (key.getCode() == KeyCode.ENTER) {
                    toggle.fire();
                    key.consume();
                }
            });
            button = toggle;
        }
        Circle dot = new Circle();
        Circle ring = new Circle();
        dot.setStyle(
                planned
                        ? "-fx-fill: -ds-sheet; -fx-stroke: -ds-ink-2; -fx-stroke-dash-array: 3 3;"
                        : current ? "-fx-fill: -ds-accent;" : "-fx-fill: -ds-ink;");
        ring.setStyle("-fx-fill: -ds-sheet; -fx-stroke: -ds-accent; -fx-stroke-width: 2;");
        ring.setVisible(current);
        Line line = new Line();
        line.setStyle(
                "-fx-stroke: -ds-ink-2; -fx-stroke-width: 1.6;" + (planned ? " -fx-stroke-dash-array: 5 4;" : ""));
        line.setVisible(index > 0);
        long between = ChronoUnit.WEEKS.between(before, date);
        Label weeks = Labels.text(
                index == 0 || between == 0 ? "" : words.count("visits.weeks", (int) between), "tiny", "third");
        for (javafx.scene.Node drawn : List.of(dot, ring, line, weeks, below)) {
            drawn.setMouseTransparent(true);
        }
        return new Stop(date, planned, current, top, button, below, dot, ring, line, weeks);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 300;
    }

    @Override
    protected void layoutChildren() {
        if (stops.isEmpty()) {
            return;
        }
        double em = em();
        if (compact) {
            choice.autosize();
            choice.relocate(COMPACT_INSET_EM * em, (getHeight() - choice.getHeight()) / 2);
            next.autosize();
            next.relocate(choice.getLayoutX() + choice.getWidth() + em, (getHeight() - next.getHeight()) / 2);
            return;
        }
        double y = getHeight() * 0.52;
        double room = ROOM_EM * em;
        double width = Math.max(room, getWidth() - room);
        LocalDate first = stops.get(0).date();
        long days = Math.max(
                1, ChronoUnit.DAYS.between(first, stops.get(stops.size() - 1).date()));
        double[] x = new double[stops.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = room / 2
                    + width * ChronoUnit.DAYS.between(first, stops.get(i).date()) / (double) days;
            if (stops.size() == 1) {
                x[i] = room / 2;
            }
            // A visit soon after another keeps room for its own words.
            x[i] = i > 0 ? Math.max(x[i], x[i - 1] + room) : x[i];
        }
        double over = x[x.length - 1] - (getWidth() - room / 2);
        if (over > 0 && x.length > 1) {
            double scale = (x[x.length - 1] - x[0] - over) / (x[x.length - 1] - x[0]);
            for (int i = 1; i < x.length; i++) {
                x[i] = x[0] + (x[i] - x[0]) * scale;
            }
        }
        for (int i = 0; i < x.length; i++) {
            Stop stop = stops.get(i);
            double radius = (stop.current() ? 0.44 : 0.47) * em;
            place(stop.dot(), x[i], y, radius);
            place(stop.ring(), x[i], y, 0.72 * em);
            centre(stop.button(), x[i], y - 1.55 * em);
            centre(stop.below(), x[i], y + 1.2 * em);
            if (i > 0) {
                stop.line().setStartX(x[i - 1] + 0.7 * em);
                stop.line().setEndX(x[i] - 0.7 * em);
                stop.line().setStartY(y);
                stop.line().setEndY(y);
                centre(stop.weeks(), (x[i - 1] + x[i]) / 2, y - 0.75 * em);
            }
        }
    }

    /** Size of its letters; 0 before the first layout. */
    double em() {
        return getHeight() / (compact ? COMPACT_EM : HEIGHT_EM);
    }

    private static void place(Circle circle, double x, double y, double radius) {
        circle.setCenterX(x);
        circle.setCenterY(y);
        circle.setRadius(radius);
    }

    private static void centre(Region region, double x, double y) {
        region.autosize();
        region.relocate(x - region.getWidth() / 2, y - region.getHeight() / 2);
    }
}
