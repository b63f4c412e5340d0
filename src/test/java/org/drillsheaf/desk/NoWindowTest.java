package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told where no window can be shown. */
class NoWindowTest {
    @TempDir
    Path folder;

    @Test
    void aBareMachineIsToldWhichPackagesToInstall() throws Exception {
        Path libraries = Files.createDirectories(folder.resolve("lib/x86_64-linux-gnu"));
        assertThat(MissingPackages.in(List.of(folder.resolve("lib"), folder.resolve("not there"))))
                .containsExactly("libgtk-3-0", "libxtst6");
        Files.createFile(libraries.resolve("libgtk-3.so.0"));
        assertThat(MissingPackages.in(List.of(folder.resolve("lib")))).containsExactly("libxtst6");
        Files.createFile(libraries.resolve("libXtst.so.6"));
        assertThat(MissingPackages.in(List.of(folder.resolve("lib")))).isEmpty();
        assertThat(DeskLaunch.noWindow("", List.of("libgtk-3-0", "libxtst6"), true)
                        .message())
                .contains("apt-get install libgtk-3-0 libxtst6")
                .doesNotContain("no display");
        assertThat(DeskLaunch.noWindow("", List.of("libxtst6"), false).message())
                .contains("apt-get install libxtst6")
                .contains("no display");
    }

    @Test
    void withEverythingInstalledTheDisplayIsNamed() {
        assertThat(DeskLaunch.noWindow("Unable to open DISPLAY", List.of(), true)
                        .message())
                .contains("Unable to open DISPLAY");
        assertThat(DeskLaunch.noWindow("", List.of(), false).message()).contains("There is no display here");
    }

    @Test
    void aDisplayThatIsNotThereEndsInOneSentenceAndNoStackTrace() throws Exception {
        ProcessBuilder start = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Ddrillsheaf.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                "org.drillsheaf.cli.Drillsheaf",
                "desk",
                "--settings",
                folder.resolve("desk.properties").toString(),
                "--records",
                folder.toString());
        start.environment().remove("WAYLAND_DISPLAY");
        start.environment().put("DISPLAY", ":99");
        Path said = folder.resolve("said.txt");
        Process desk =
                start.redirectErrorStream(true).redirectOutput(said.toFile()).start();
        assertThat(desk.waitFor()).isEqualTo(2);
        assertThat(Files.readString(said))
                .startsWith("the window: ")
                .hasLineCount(1)
                .doesNotContain("Exception");
    }
}
