package org.drillsheaf.benchmarks;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.collections.FXCollections;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ListView;
import javafx.stage.Stage;
import org.drillsheaf.Problems;
import org.drillsheaf.desk.catalogue.CatalogueList;
import org.drillsheaf.desk.catalogue.CatalogueModel;
import org.drillsheaf.desk.catalogue.DrillEntry;
import org.drillsheaf.desk.catalogue.DrillPictures;
import org.drillsheaf.desk.catalogue.DrillQuery;
import org.drillsheaf.desk.look.Look;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.ThreadBackground;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.library.ProjectFiles;

/**
 * How smoothly the list of drills scrolls with 10 000 of them: processor time on the toolkit's thread in each frame, up to the end of layout, beside a plain list of
 * as many names in the same run, and the time from a key to the new list. No test; {@code docs/benchmarks.md} says how to run it.
 */
public final class CatalogueListFrames {
    private static final int DRILLS = 10_000;
    private static final int FRAMES = 300;
    private static final int WARM_FRAMES = 60;

    private CatalogueListFrames() {}

    public static void main(String[] arguments) throws Exception {
        CountDownLatch up = new CountDownLatch(1);
        Platform.startup(up::countDown);
        Platform.setImplicitExit(false);
        up.await();
        Catalogue catalogue = LibraryFiles.read(
                        ProjectFiles.alone(Path.of(""), Path.of("exercise-library")), new Problems())
                .orElseThrow()
                .catalogue();
        List<DrillEntry> entries = entries(catalogue);
        List<String> names = entries.stream().map(e -> e.name("en")).toList();
        double[] plain = frames(() -> {
            ListView<String> list = new ListView<>(FXCollections.observableArrayList(names));
            list.setFixedCellSize(64);
            return new Shown(list, row -> list.scrollTo(row));
        });
        CatalogueModel[] model = new CatalogueModel[1];
        ThreadBackground background = new ThreadBackground(1);
        double[] drills = frames(() -> {
            model[0] = new CatalogueModel(Words.in("en"), catalogue.words(), Map.of(), entries);
            DrillPictures pictures = new DrillPictures(
                    work -> background.run(
                            () -> {
                                work.run();
                                return true;
                            },
                            done -> {},
                            e -> {}),
                    background::show);
            CatalogueList list = new CatalogueList(model[0], pictures, Words.in("en"), Phase::title, e -> {});
            ListView<?> rows = (ListView<?>) list.lookup(".drill-list");
            return new Shown(list, rows::scrollTo);
        });
        print("plain list of names", plain, plain);
        print("list of drills", drills, plain);
        keys(entries);
        System.exit(0);
    }

    /** Processor time of this thread, nanoseconds: what else the machine does leaves it alone. */
    private static long processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** Copies of the library's drills under names of their own. */
    private static List<DrillEntry> entries(Catalogue catalogue) {
        List<DrillEntry> entries = new ArrayList<>();
        List<Drill> drills = catalogue.drills();
        for (int i = 0; i < DRILLS; i++) {
            entries.add(DrillEntry.of(drills.get(i % drills.size()), Standing.STARTER, catalogue.words()));
        }
        return entries;
    }

    private record Shown(Parent root, Consumer<Integer> scroll) {}

    private interface Content {
        Shown make();
    }

    /** Processor milliseconds before and in the layout of each frame, three rows a frame. */
    private static double[] frames(Content content) throws InterruptedException {
        List<Double> times = new ArrayList<>();
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(() -> {
            Look.prepare();
            Shown shown = content.make();
            Scene scene = new Scene(shown.root(), 300, 760);
            Look.dress(scene, DeskSettings.FIRST);
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            long[] began = new long[1];
            scene.addPostLayoutPulseListener(() -> times.add((processor() - began[0]) / 1e6));
            new AnimationTimer() {
                private int frame;

                @Override
                public void handle(long now) {
                    began[0] = processor();
                    if (frame++ == WARM_FRAMES + FRAMES) {
                        stop();
                        stage.hide();
                        done.countDown();
                        return;
                    }
                    shown.scroll().accept(frame * 3);
                }
            }.start();
        });
        done.await();
        return times.stream()
                .skip(WARM_FRAMES)
                .limit(FRAMES)
                .mapToDouble(d -> d)
                .sorted()
                .toArray();
    }

    private static void print(String name, double[] sorted, double[] baseline) {
        System.out.printf(
                Locale.ROOT,
                "%-22s median %.2f ms (%.1f of the plain list), 95 %% %.2f ms, longest %.2f ms, over 16.7 ms %d of %d%n",
                name,
                at(sorted, .5),
                at(sorted, .5) / at(baseline, .5),
                at(sorted, .95),
                sorted[sorted.length - 1],
                java.util.Arrays.stream(sorted).filter(t -> t > 16.7).count(),
                sorted.length);
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, sorted.length * share)];
    }

    private static void keys(List<DrillEntry> entries) {
        List<Double> times = new ArrayList<>();
        for (String typed : List.of("k", "kn", "kne", "knee", "knee w", "knee wa", "wall", "resp", "respiracion")) {
            for (int i = 0; i < 20; i++) {
                long began = processor();
                DrillQuery.ALL.withWords(typed).find(entries);
                times.add((processor() - began) / 1e6);
            }
        }
        Collections.sort(times);
        System.out.printf(
                Locale.ROOT,
                "search of one key      median %.2f ms, 95 %% %.2f ms%n",
                times.get(times.size() / 2),
                times.get((int) (times.size() * .95)));
    }
}
