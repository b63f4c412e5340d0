package org.drillsheaf.program.build;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Measures the builder over invented catalogues and prints a table; no test. Arguments: how many tasks of each size (default
 * 5), and {@code alone} to leave the second opinion out. Each task is solved once to warm up and once for the clock.
 */
public final class BuilderBenchmark {
    private static final Objective OBJECTIVE = new Objective(List.of(Level.values()));
    private static final int[] SIZES = {60, 100, 300, 1_000, 10_000};
    private static final int LARGEST_FOR_THE_OTHER = 300;

    private BuilderBenchmark() {}

    /** Prints one row a size. */
    public static void main(String[] arguments) {
        int tasks = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 5;
        boolean alone = arguments.length > 1 && arguments[1].equals("alone");
        int largest = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 10_000;
        if (!alone) {
            Loader.loadNativeLibraries();
        }
        System.out.println("| drills | proved | median ms | slowest ms | times faster than the second solver | MB |");
        System.out.println("|---|---|---|---|---|---|");
        for (int size : SIZES) {
            if (size <= largest) {
                row(size, tasks, alone || size > LARGEST_FOR_THE_OTHER);
            }
        }
    }

    private static void row(int size, int tasks, boolean alone) {
        ExactBuilder builder = new ExactBuilder(OBJECTIVE, size > 1_000 ? 3_000 : ExactBuilder.USUAL_NODES);
        List<Double> times = new ArrayList<>();
        List<Double> ratios = new ArrayList<>();
        int proved = 0;
        for (int seed = 0; seed < tasks; seed++) {
            BuildTask task = RandomTasks.large(seed, size);
            builder.value(task);
            long start = System.nanoTime();
            Answer answer = builder.value(task);
            double milliseconds = (System.nanoTime() - start) / 1e6;
            times.add(milliseconds);
            boolean decided = answer.kind() == Answer.Kind.BEST || answer.kind() == Answer.Kind.NOTHING_FITS;
            proved += decided ? 1 : 0;
            if (!alone) {
                long other = System.nanoTime();
                SecondOpinion.best(task, List.of(Level.values()));
                ratios.add((System.nanoTime() - other) / 1e6 / milliseconds);
            }
        }
        Runtime runtime = Runtime.getRuntime();
        long megabytes = (runtime.totalMemory() - runtime.freeMemory()) >> 20;
        System.out.printf(
                Locale.ROOT,
                "| %d | %d of %d | %.0f | %.0f | %s | %d |%n",
                size,
                proved,
                tasks,
                median(times),
                times.stream().mapToDouble(t -> t).max().orElse(0),
                ratios.isEmpty() ? "–" : String.format(Locale.ROOT, "%.0f", median(ratios)),
                megabytes);
    }

    private static double median(List<Double> values) {
        double[] sorted = values.stream().mapToDouble(v -> v).sorted().toArray();
        return Arrays.stream(sorted).skip(sorted.length / 2).findFirst().orElse(0);
    }
}
