package org.drillsheaf.benchmarks;

import com.google.ortools.Loader;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.program.GrownCatalogue;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Level;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.program.build.SecondOpinion;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The builder over the house catalogue, grown: time to the proof, and the same question to a constraint solver in the same run as
 * the baseline. Counted beside the time: whether the answer was proved, how far from the bound it is in points of coverage, and
 * memory. One iteration is measured, since what is counted is summed over iterations. Aims, warm, on two cores: 0.5 s for 1 000 drills, 2 s for 10 000.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 1)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class BuilderBenchmark {
    /** Wall time that the baseline gets for all levels; it counts as not proved, slower than this, when that is not enough. */
    private static final double BASELINE_SECONDS = 40;

    private static final List<Level> ORDER = List.of(Level.values());

    @Param({"60", "300", "1000", "10000"})
    public int drills;

    private final ExactBuilder builder = new ExactBuilder(new Objective(ORDER), ExactBuilder.USUAL_STEPS);
    private BuildTask task;

    /** What is told beside the time. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Told {
        public double proved;
        public double pointsFromBound;
        /** In use at the end, garbage and all. */
        public double megabytes;
        /** Allocated by the searching thread on the way. */
        public double allocatedMegabytes;
    }

    @Setup
    public void grow() {
        Loader.loadNativeLibraries();
        task = GrownCatalogue.task(drills, 0);
    }

    @Benchmark
    @Warmup(iterations = 8)
    public Answer builder(Told told) {
        long allocated = allocated();
        Answer answer = builder.value(task);
        told.allocatedMegabytes = (allocated() - allocated) / 1048576.0;
        told.proved = answer.kind() == Answer.Kind.BEST ? 1 : 0;
        Objective objective = builder.objective();
        told.pointsFromBound =
                objective.unpack(answer.value(), Level.COVERAGE) - objective.unpack(answer.bound(), Level.COVERAGE);
        Runtime runtime = Runtime.getRuntime();
        told.megabytes = (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0;
        return answer;
    }

    private static long allocated() {
        return ((ThreadMXBean) ManagementFactory.getThreadMXBean()).getCurrentThreadAllocatedBytes();
    }

    /** Once, cold, since its time is its own native code's. */
    @Benchmark
    @Warmup(iterations = 0)
    public boolean constraintSolver(Told told) {
        try {
            SecondOpinion.best(task, ORDER, BASELINE_SECONDS);
            told.proved = 1;
        } catch (IllegalStateException tooLittleTime) {
            told.proved = 0;
        }
        return told.proved > 0;
    }
}
