package org.drillsheaf.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.DeskWindow;
import org.drillsheaf.desk.look.Look;
import org.drillsheaf.desk.setting.SettingsFile;
import org.drillsheaf.desk.work.ThreadBackground;

/**
 * Time, and processor time of the process, from its start to its first painted window: the desk's first page beside an empty window of the same toolkit,
 * whole processes in turn, each without and with an archive of loaded classes (which the launcher makes at the first run). No
 * test; {@code docs/benchmarks.md} says how to run it.
 */
public final class FirstWindow {
    private static final int ROUNDS = Integer.getInteger("rounds", 5);
    private static final String PAINTED = "painted ";

    private FirstWindow() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 1) {
            show(arguments[0]);
            return;
        }
        Path folder = Files.createTempDirectory("first-window");
        Path jars = jars(folder);
        String[] names = {"empty window", "desk", "empty window, archive", "desk, archive"};
        List<List<Taken>> taken = new ArrayList<>();
        for (String name : names) {
            taken.add(new ArrayList<>());
            if (name.endsWith("archive")) {
                start(jars, what(name), "-XX:ArchiveClassesAtExit=" + archive(folder, name));
            }
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < names.length; i++) {
                String sharing = names[i].endsWith("archive")
                        ? "-XX:SharedArchiveFile=" + archive(folder, names[i])
                        : "-Xshare:auto";
                taken.get(i).add(start(jars, what(names[i]), sharing));
            }
        }
        for (int i = 0; i < names.length; i++) {
            Taken median = median(taken.get(i));
            Taken empty = median(taken.get(i / 2 * 2));
            System.out.printf(
                    "%-24s %5.0f ms, %.2f of the empty window; processor time %5.0f ms, %.2f of it%n",
                    names[i],
                    median.clock(),
                    median.clock() / empty.clock(),
                    median.processor(),
                    median.processor() / empty.processor());
        }
        System.exit(0);
    }

    /** Milliseconds up to the first painted window. */
    private record Taken(double clock, double processor) {}

    private static Taken median(List<Taken> taken) {
        double[] clock = taken.stream().mapToDouble(Taken::clock).sorted().toArray();
        double[] processor =
                taken.stream().mapToDouble(Taken::processor).sorted().toArray();
        return new Taken(clock[clock.length / 2], processor[processor.length / 2]);
    }

    private static String what(String name) {
        return name.startsWith("desk") ? "desk" : "empty";
    }

    private static Path archive(Path folder, String name) {
        return folder.resolve(what(name) + ".jsa");
    }

    /** An archive of classes takes jars only, so the folders of the class path are packed first. */
    private static Path jars(Path folder) throws IOException, InterruptedException {
        List<String> packed = new ArrayList<>();
        for (String part : System.getProperty("java.class.path").split(java.io.File.pathSeparator)) {
            if (Files.isDirectory(Path.of(part))) {
                Path jar = folder.resolve(packed.size() + ".jar");
                new ProcessBuilder(java("jar"), "--create", "--file", jar.toString(), "-C", part, ".")
                        .inheritIO()
                        .start()
                        .waitFor();
                packed.add(jar.toString());
            } else {
                packed.add(part);
            }
        }
        Path list = folder.resolve("class-path");
        Files.writeString(list, "-cp \"" + String.join(java.io.File.pathSeparator, packed) + "\"");
        return list;
    }

    private static String java(String tool) {
        return Path.of(System.getProperty("java.home"), "bin", tool).toString();
    }

    private static Taken start(Path classPath, String what, String sharing) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java("java")));
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.startsWith("-D"))
                .forEach(command::add);
        command.addAll(List.of(
                "-XX:+UseSerialGC",
                "-Xmx1g",
                "-Xlog:disable",
                "-Xlog:all=error:stderr",
                sharing,
                "@" + classPath,
                FirstWindow.class.getName(),
                what));
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String line = lines.readLine();
            double taken = (System.nanoTime() - start) / 1e6;
            process.waitFor();
            if (line == null || !line.startsWith(PAINTED)) {
                throw new IllegalStateException("the window of " + what + " was not painted: " + line);
            }
            return new Taken(taken, Double.parseDouble(line.substring(PAINTED.length())));
        }
    }

    /** In the process that is measured: says so when the second frame begins, for then the first is painted, and ends. */
    private static void show(String what) {
        Platform.startup(() -> {
            try {
                Stage stage = new Stage();
                Scene scene = what.equals("desk") ? desk(stage) : empty(stage);
                int[] frames = {0};
                scene.addPostLayoutPulseListener(() -> {
                    if (frames[0]++ == 0) {
                        Platform.requestNextPulse();
                        return;
                    }
                    System.out.println(PAINTED + processor());
                    System.exit(0);
                });
                Platform.requestNextPulse();
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
    }

    private static double processor() {
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return system.getProcessCpuTime() / 1e6;
    }

    private static Scene empty(Stage stage) {
        Scene scene = new Scene(new StackPane(), 1440, 900);
        stage.setScene(scene);
        stage.show();
        return scene;
    }

    private static Scene desk(Stage stage) throws IOException {
        Look.prepare();
        Path folder = Files.createTempDirectory("desk");
        DeskWindow window = new DeskWindow(
                stage,
                new Folders(Path.of("").toAbsolutePath(), folder.resolve("no-clinic")),
                new SettingsFile(folder.resolve("desk.properties")),
                folder,
                Clock.systemDefaultZone(),
                new ThreadBackground(3),
                new DeskRun.Answers());
        window.show();
        return window.scene();
    }
}
