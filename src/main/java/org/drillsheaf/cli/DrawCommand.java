package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.draw.ContactSheet;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingPng;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.DrawingSvg;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.PoseFrame;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws one drill, movement test or pose file, or a contact sheet of the whole catalogue or of the tests. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        description = "Draws the pictures of a drill, of a movement test or of a pose file, or a contact sheet of the"
                + " whole catalogue or of all movement tests.",
        footer = {
            "",
            "Try: drillsheaf draw wall-lean-breath --out pictures",
            "     drillsheaf draw wall-lean-breath --view q:40,14 --keyframe move --format png --out reach.png",
            "     drillsheaf draw thigh-drop --format png --out pictures",
            "     drillsheaf draw --sheet --out pictures/catalogue.pdf",
            "     drillsheaf draw --tests --sheet --out pictures/tests.pdf"
        })
final class DrawCommand implements Callable<Integer> {
    /** Dots on an inch of a PNG: enough for print. */
    private static final double PIXELS_PER_MM = 300 / 25.4;

    private static final double SCALE = 60;
    /** As large as on a handout. */
    private static final double SHEET_SCALE = 50;
    /** A4 on its side holds two drills beside each other. */
    private static final double SHEET_WIDTH = 297;

    private static final double SHEET_HEIGHT = 210;

    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HouseOption house = new HouseOption();

    @Parameters(
            arity = "0..1",
            paramLabel = "<drill|test|file>",
            description = "Id of a drill or of a movement test, or a YAML file.")
    private @Nullable String what;

    @Option(
            names = "--view",
            paramLabel = "<view>",
            description = "side, front, back, far-side, top, q:azimuth,elevation, or auto; else the drill's own views.")
    private @Nullable String view;

    @Option(names = "--keyframe", paramLabel = "<frame>", description = "start, move or end; else all there are.")
    private @Nullable String keyframe;

    @Option(names = "--format", paramLabel = "<format>", description = "svg or png, for a sheet also pdf.")
    private @Nullable String format;

    @Option(names = "--out", paramLabel = "<path>", description = "Folder, or file for a single picture or a sheet.")
    private Path out = Path.of("");

    @Option(
            names = "--style",
            paramLabel = "<style>",
            description = "author (labels, angles) or paper (number keys); author by default.")
    private String style = "author";

    @Option(
            names = "--scale",
            paramLabel = "<mm>",
            description = "Millimetres on paper for the height of the body; 60 by default, 50 on a sheet.")
    private @Nullable Double scale;

    @Option(names = "--build", paramLabel = "<build>", description = "average, larger or older.")
    private String build = "average";

    @Option(
            names = "--stature",
            paramLabel = "<cm>",
            description = "Prints the distances for this height in paper pictures and in those of tests.")
    private @Nullable Double stature;

    @Option(names = "--left", description = "Shows the left side of a sided drill.")
    private boolean left;

    @Option(names = "--sheet", description = "A contact sheet of every drill in the catalogue, each in its first view.")
    private boolean sheet;

    @Option(names = "--tests", description = "With --sheet: every movement test instead of the drills.")
    private boolean tests;

    @Override
    public Integer call() {
        Folders folders = house.folders();
        DrillPictures pictures = new DrillPictures(new FigureDrawer(), request());
        if (tests && !sheet) {
            throw BadInput.because("--tests", "This goes with --sheet only", "Add --sheet, or name one test");
        }
        try (Progress progress = new Progress(spec.commandLine().getErr())) {
            if (sheet) {
                progress.stage(tests ? "Drawing the movement tests" : "Drawing the catalogue");
                drawSheet(pictures, folders);
            } else if (what == null) {
                throw BadInput.because("draw", "Nothing to draw is named", "Name a drill or a file, or use --sheet");
            } else {
                progress.stage("Drawing");
                drawOne(pictures, folders, what);
            }
        }
        return ExitCode.DONE;
    }

    private DrillPictures.Request request() {
        boolean paper = oneOf("--style", style, List.of("author", "paper")).equals("paper");
        double height = scale != null ? scale : sheet ? SHEET_SCALE : SCALE;
        if (!(height >= 10 && height <= 400)) {
            throw BadInput.because("--scale", height + " is out of range", "Use 10 to 400 millimetres");
        }
        if (stature != null && !(stature >= 100 && stature <= 230)) {
            throw BadInput.because("--stature", stature + " is out of range", "Use 100 to 230 centimetres");
        }
        Optional<PoseFrame> frame = Optional.ofNullable(keyframe)
                .map(word -> oneOf("--keyframe", word, List.of("start", "move", "end")))
                .flatMap(PoseFrame::of);
        if (view != null
                && !view.equals(DrillPictures.AUTOMATIC)
                && View.parse(view).isEmpty()) {
            throw BadInput.because(
                    "--view",
                    "There is no view “" + view + "”",
                    "Use side, front, back, far-side, top, auto or q:azimuth,elevation such as q:40,14");
        }
        List<String> builds =
                Arrays.stream(BodyBuild.values()).map(BodyBuild::id).toList();
        return new DrillPictures.Request(
                Optional.ofNullable(view),
                frame,
                paper ? DrawingStyle.paper(height) : DrawingStyle.author(height),
                BodyBuild.valueOf(oneOf("--build", build, builds).toUpperCase(Locale.ROOT)),
                left,
                sheet,
                Optional.ofNullable(stature));
    }

    private static String oneOf(String option, String word, List<String> allowed) {
        if (!allowed.contains(word)) {
            throw BadInput.because(
                    option, "“" + word + "” is not possible here", "Use one of: " + String.join(", ", allowed));
        }
        return word;
    }

    private void drawOne(DrillPictures pictures, Folders folders, String named) {
        DrawnSource source = DrawnSource.find(named, folders);
        String kind = kind(List.of("svg", "png"));
        Problems problems = new Problems();
        List<DrillPictures.Named> drawn = pictures.draw(source, problems);
        BadInput.stopAtErrors(problems);
        report(problems);
        if (drawn.isEmpty()) {
            throw BadInput.because(
                    source.file(), "There is no such keyframe", "Leave --keyframe out to see which ones");
        }
        boolean toFile = drawn.size() == 1 && isFile(out);
        if (!toFile) {
            TextFile.makeFolder(out.toAbsolutePath());
        }
        for (DrillPictures.Named picture : drawn) {
            Path file = toFile ? out : out.resolve(picture.name() + "." + kind);
            write(file, kind.equals("png") ? png(picture.drawing()) : svg(picture.drawing()));
        }
    }

    private void drawSheet(DrillPictures pictures, Folders folders) {
        String kind = kind(List.of("pdf", "png", "svg"));
        Problems problems = new Problems();
        List<ContactSheet.Entry> entries = new ArrayList<>();
        List<DrawnSource> sources = tests ? DrawnSource.tests(folders) : DrawnSource.catalogue(folders);
        record Result(List<DrillPictures.Named> pictures, Problems problems) {}
        List<Result> results = sources.parallelStream()
                .map(source -> {
                    Problems own = new Problems();
                    return new Result(pictures.draw(source, own), own);
                })
                .toList();
        for (int i = 0; i < sources.size(); i++) {
            Result result = results.get(i);
            problems.addAll(result.problems.all());
            List<Drawing> drawings =
                    result.pictures.stream().map(DrillPictures.Named::drawing).toList();
            if (!drawings.isEmpty()) {
                DrawnSource source = sources.get(i);
                entries.add(new ContactSheet.Entry(source.title(), source.name(), drawings));
            }
        }
        report(problems);
        List<Drawing> pages = ContactSheet.pages(entries, SHEET_WIDTH, SHEET_HEIGHT);
        writePages(pages, kind);
        spec.commandLine()
                .getOut()
                .println(entries.size()
                        + (tests ? " movement tests on " : " drills on ")
                        + pages.size()
                        + (pages.size() == 1 ? " page" : " pages"));
    }

    private void writePages(List<Drawing> pages, String kind) {
        Path target = isFile(out) ? out : out.resolve("contact-sheet." + kind);
        TextFile.makeFolder(
                Optional.ofNullable(target.toAbsolutePath().getParent()).orElse(target.toAbsolutePath()));
        if (kind.equals("pdf")) {
            write(target, DrawingPages.pdf(pages));
            return;
        }
        String name = target.getFileName().toString();
        String stem = name.substring(0, name.lastIndexOf('.'));
        for (int i = 0; i < pages.size(); i++) {
            Path file = pages.size() == 1 ? target : target.resolveSibling(stem + "-" + (i + 1) + "." + kind);
            write(file, kind.equals("png") ? png(pages.get(i)) : svg(pages.get(i)));
        }
    }

    /** The written format, or that of the file to write. */
    private String kind(List<String> allowed) {
        if (format != null) {
            return oneOf("--format", format, allowed);
        }
        String name = out.toString();
        return isFile(out)
                ? oneOf("--out", name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT), allowed)
                : allowed.get(0);
    }

    private static boolean isFile(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).matches(".*\\.(svg|png|pdf)") && !Files.isDirectory(path);
    }

    private static byte[] svg(Drawing drawing) {
        return DrawingSvg.write(drawing).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] png(Drawing drawing) {
        return DrawingPng.write(drawing, PIXELS_PER_MM);
    }

    private void write(Path file, byte[] bytes) {
        TextFile.write(file, bytes);
        spec.commandLine().getOut().println("Wrote " + file);
    }

    private void report(Problems problems) {
        PrintWriter err = spec.commandLine().getErr();
        problems.all().stream().map(Problem::message).forEach(err::println);
    }
}
