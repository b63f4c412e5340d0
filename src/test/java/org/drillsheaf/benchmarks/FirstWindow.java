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
import java.util.Arrays;
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
 * Time from starting a process to its first painted window: the desk's first page beside an empty window of the same toolkit,
 * whole processes in turn, each without and with an archive of loaded classes (which the launcher makes at the first run). No
 * test; {@code docs/benchmarks.md} says how to run it.
 */
public final class FirstWindow {
    private static final int ROUNDS = 5;
    private static final String PAINTED = "painted";

    private FirstWindow() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 1) {
            show(arguments[0]);
            return;
        }
        Path folder = Files.createTempDirectory("first-window");
        Path jars = jars(folder);
        List<List<Double>> times = new ArrayList<>();
        String[] names = {"empty window", "desk", "empty window, archive", "desk, archive"};
        for (String name : names) {
            times.add(new ArrayList<>());
            if (name.endsWith("archive")) {
                milliseconds(jars, what(name), "-XX:ArchiveClassesAtExit=" + archive(folder, name));
            }
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < names.length; i++) {
                String sharing = names[i].endsWith("archive")
                        ? "-XX:SharedArchiveFile=" + archive(folder, names[i])
                        : "-Xshare:auto";
                times.get(i).add(milliseconds(jars, what(names[i]), sharing));
            }
        }
        for (int i = 0; i < names.length; i++) {
            double[] sorted = times.get(i).stream().mapToDouble(d -> d).sorted().toArray();
            double empty =
                    times.get(i / 2 * 2).stream().mapToDouble(d -> d).sorted().toArray()[ROUNDS / 2];
            System.out.printf(
                    "%-24s median %5.0f ms, %.2f of the empty window; all: %s%n",
                    names[i],
                    sorted[ROUNDS / 2],
                    sorted[ROUNDS / 2] / empty,
                    Arrays.toString(Arrays.stream(sorted).mapToLong(Math::round).toArray()));
        }
        System.exit(0);
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

    private static double milliseconds(Path classPath, String what, String sharing)
            throws IOException, InterruptedException {
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
            if (!PAINTED.equals(line)) {
                throw new IllegalStateException("the window of " + what + " was not painted: " + line);
            }
            return taken;
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
                    System.out.println(PAINTED);
                    System.exit(0);
                });
                Platform.requestNextPulse();
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
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
