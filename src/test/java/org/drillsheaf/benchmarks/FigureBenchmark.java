package org.drillsheaf.benchmarks;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingCache;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.DrawingSvg;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.pose.PoseSheet;
import org.drillsheaf.figure.pose.SolvedSheet;
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
 * What one figure costs, warm: solving its keyframes, drawing its last keyframe at both qualities, writing it, and asking for
 * it again; and its bytes. Aims on two cores: under 60 ms at preview quality, under 300 ms at print quality, under 25 kB. About
 * three and a half minutes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 2, time = 2)
@Fork(1)
public class FigureBenchmark {
    /** Upright, lying and folded up. */
    @Param({"wall-lean-breath", "lying-heel-slide", "hold-and-sit-low"})
    public String drill = "";

    private final FigureDrawer drawer = new FigureDrawer();
    private final DrawingCache cache = new DrawingCache(drawer, 10);
    private final DrawingStyle print = DrawingStyle.paper(50);
    private final DrawingStyle preview = print.with(DrawingStyle.Quality.PREVIEW);
    private PoseSheet sheet;
    private LibraryPictures.Picture picture;
    private Drawing drawing;

    /** How much a picture is. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Size {
        public double bytes;
    }

    @Setup
    public void prepare() {
        Path file = Path.of("exercise-library", drill + ".yaml");
        sheet = LibraryPictures.sheet(file);
        List<LibraryPictures.Picture> pictures = LibraryPictures.pictures(file);
        picture = pictures.get(pictures.size() - 1);
        drawing = picture.draw(drawer, print);
    }

    @Benchmark
    public SolvedSheet solvedKeyframes() {
        return sheet.solve();
    }

    @Benchmark
    public Drawing previewPicture() {
        return picture.draw(drawer, preview);
    }

    @Benchmark
    public Drawing printPicture() {
        return picture.draw(drawer, print);
    }

    @Benchmark
    public Drawing repeatedPicture() {
        return cache.draw(picture.pose(), picture.view(), print, Annotations.NONE);
    }

    @Benchmark
    public String svg() {
        return DrawingSvg.write(drawing);
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public String printBytes(Size size) {
        String svg = DrawingSvg.write(drawing);
        size.bytes = svg.getBytes(StandardCharsets.UTF_8).length;
        return svg;
    }
}
