package org.drillsheaf.benchmarks;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.DrawingSvg;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The whole library: the contact sheet from a cold start, and every picture on its own once the machine is warm. Aims on two
 * cores: the sheet with one picture a drill at print quality under 30 s; each picture under 60 ms at preview and 300 ms at
 * print quality, and under 25 kB.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class FigureLibraryBenchmark {
    private static final DrawingStyle PRINT = DrawingStyle.paper(50);
    private static final DrawingStyle PREVIEW = PRINT.with(DrawingStyle.Quality.PREVIEW);
    private static final double NANOS_PER_MILLI = 1e6;

    /** Work of all threads; half of it is the least a run on two free cores can take. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Work {
        public double cpuSeconds;
        public double pictures;
    }

    /** What the pictures of the library take. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Pictures {
        public double pictures;
        public double medianMillis;
        public double slowestMillis;
        public double meanBytes;
        public double mostBytes;
    }

    /** One picture a drill, read, solved and drawn in a fresh machine, drills side by side on both cores. */
    @Benchmark
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    @Fork(1)
    public List<Drawing> coldSheet(Work work) {
        FigureDrawer drawer = new FigureDrawer();
        List<Drawing> drawings = LibraryPictures.files().parallelStream()
                .map(file -> {
                    List<LibraryPictures.Picture> pictures = LibraryPictures.pictures(file);
                    return pictures.get(Math.min(1, pictures.size() - 1)).draw(drawer, PRINT);
                })
                .toList();
        work.pictures = drawings.size();
        work.cpuSeconds = cpuSeconds();
        return drawings;
    }

    @Benchmark
    @Warmup(iterations = 1)
    @Measurement(iterations = 1)
    @Fork(1)
    public void everyPictureAtPrint(Pictures pictures) {
        everyPicture(PRINT, pictures);
    }

    @Benchmark
    @Warmup(iterations = 1)
    @Measurement(iterations = 1)
    @Fork(1)
    public void everyPictureAtPreview(Pictures pictures) {
        everyPicture(PREVIEW, pictures);
    }

    private record Cost(String picture, double millis, int bytes) {}

    private static void everyPicture(DrawingStyle style, Pictures counters) {
        FigureDrawer drawer = new FigureDrawer();
        List<Cost> costs = new ArrayList<>();
        for (Path file : LibraryPictures.files()) {
            for (LibraryPictures.Picture picture : LibraryPictures.pictures(file)) {
                long before = System.nanoTime();
                Drawing drawing = picture.draw(drawer, style);
                double millis = (System.nanoTime() - before) / NANOS_PER_MILLI;
                int bytes = DrawingSvg.write(drawing).getBytes(StandardCharsets.UTF_8).length;
                costs.add(new Cost(picture.name(), millis, bytes));
            }
        }
        List<Cost> slowest = costs.stream()
                .sorted(Comparator.comparingDouble(Cost::millis).reversed())
                .toList();
        List<Cost> largest = costs.stream()
                .sorted(Comparator.comparingInt(Cost::bytes).reversed())
                .toList();
        counters.pictures = costs.size();
        counters.medianMillis = slowest.get(costs.size() / 2).millis;
        counters.slowestMillis = slowest.get(0).millis;
        counters.meanBytes = costs.stream().mapToInt(Cost::bytes).average().orElse(0);
        counters.mostBytes = largest.get(0).bytes;
        tell("slowest", slowest.subList(0, 3));
        tell("largest", largest.subList(0, 3));
    }

    private static void tell(String what, List<Cost> costs) {
        for (Cost cost : costs) {
            System.out.printf(Locale.ROOT, "%n%s: %s %.0f ms %d B", what, cost.picture, cost.millis, cost.bytes);
        }
        System.out.println();
    }

    private static double cpuSeconds() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean machine
                ? machine.getProcessCpuTime() / 1e9
                : Double.NaN;
    }
}
