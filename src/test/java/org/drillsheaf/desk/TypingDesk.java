package org.drillsheaf.desk;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Saving;
import org.drillsheaf.desk.setting.DeskSettings;

/**
 * A desk in a process of its own, with a real window without a display: types one value after the other, each larger than what
 * stood there, and says after each key what the window shows as saved, until it is killed.
 */
final class TypingDesk {
    private static final List<String> FIELDS = List.of(
            "Sway-back stance, hip ahead, cm", "Sway-back stance, shoulder behind, cm", "Comfortable breath out, s");
    private static final List<String> PATHS =
            List.of("/screen/sway-back-stance/hip", "/screen/sway-back-stance/shoulder", "/screen/breath-out/value");

    private TypingDesk() {}

    /** @param said gets what it says, line by line */
    static Process start(Path folder, Path said) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.startsWith("-D"))
                .forEach(command::add);
        command.addAll(List.of(
                "-Xmx1g",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                TypingDesk.class.getName(),
                folder.toString()));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(said.toFile())
                .start();
    }

    /** Sum of the values; it only grows while the desk types. */
    static int sum(ClientCase client) {
        return PATHS.stream()
                .mapToInt(path ->
                        client.content().value(path).map(Integer::parseInt).orElse(0))
                .sum();
    }

    static ClientCase client(DeskRun desk) {
        return desk.window()
                .frame()
                .orElseThrow()
                .clients()
                .openClient()
                .orElseThrow()
                .client();
    }

    /** The argument is the folder of settings and records. */
    public static void main(String[] arguments) {
        DeskRun desk = DeskRun.start(Path.of(arguments[0]), DeskSettings.FIRST);
        desk.click("Open the demo clinic");
        desk.click("Odile Farrant");
        desk.untilSeen("16 of 16 tests taken.");
        for (String field : FIELDS) {
            desk.click(field);
            int now = Integer.parseInt(DeskRun.fx(() -> ((javafx.scene.control.TextField)
                            Seen.find(desk.scene().getRoot(), field).orElseThrow())
                    .getText()));
            for (int value = now + 1; value <= 9; value++) {
                desk.press(javafx.scene.input.KeyCode.CONTROL, javafx.scene.input.KeyCode.A);
                desk.type(Integer.toString(value));
                DeskRun.fx(() -> {
                    if (client(desk).saved().get() instanceof Saving.State.Saved) {
                        System.out.println(sum(client(desk)));
                    }
                    return true;
                });
            }
        }
        desk.until("it is killed", () -> {
            System.out.println(sum(client(desk)));
            return false;
        });
    }
}
