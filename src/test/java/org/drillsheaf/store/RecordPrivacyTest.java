package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody who finds the files, the logs or the temporary files of a desk reads a client's or a coach's name there. */
final class RecordPrivacyTest {
    @TempDir
    Path folder;

    /**
     * The desk is a process of its own with its own folder for temporary files. It does everything that a record does, is
     * looked through while it is at work, and is looked through again after it was killed.
     */
    @Test
    void noNameStandsInClearInFilesLogsAndTemporaryFiles() throws Exception {
        Path record = Files.createDirectory(folder.resolve("record"));
        Path temporary = Files.createDirectory(folder.resolve("temporary"));
        Path logs = Files.createDirectory(folder.resolve("logs"));
        Process desk = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:-UsePerfData",
                        "-XX:ErrorFile=" + logs.resolve("crash.log"),
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        System.getProperty("java.class.path"),
                        BusyDesk.class.getName(),
                        record.resolve("record.mv.db").toString())
                .redirectError(logs.resolve("err.log").toFile())
                .start();
        String ready = desk.inputReader().readLine();
        assertThat(ready).as(Files.readString(logs.resolve("err.log"))).isEqualTo("all done, still open");
        assertThat(namesInClear()).as("at work").isEmpty();
        desk.destroyForcibly().waitFor();
        assertThat(namesInClear()).as("after it was killed").isEmpty();
        assertThat(Files.list(record)).as("there was something to look through").isNotEmpty();
        Files.writeString(logs.resolve("proof.log"), "saved Odile Farrant");
        assertThat(namesInClear()).as("a name is found where there is one").hasSize(1);
    }

    @Test
    void onlyTheOwnerMayReadTheFileAndItsBackups() throws Exception {
        StoreAddress.File file = (StoreAddress.File) Engines.FILE.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(file, passphrase, Engines.CLOCK)) {
            store.clients().add(Engines.client("odile-farrant"), "Tamsin Rook");
            store.backups().make();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> kept = files.filter(one -> one.toString().endsWith(StoreAddress.File.SUFFIX))
                    .toList();
            assertThat(kept).hasSizeGreaterThan(1);
            for (Path one : kept) {
                assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(one)))
                        .as(one.toString())
                        .isEqualTo("rw-------");
            }
        }
    }

    private List<Path> namesInClear() throws IOException {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                byte[] bytes = Files.readAllBytes(file);
                for (var charset :
                        List.of(StandardCharsets.ISO_8859_1, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
                    String text = new String(bytes, charset).toLowerCase(java.util.Locale.ROOT);
                    if (text.contains("farrant") || text.contains("odile") || text.contains("tamsin")) {
                        found.add(file);
                        break;
                    }
                }
            }
        }
        return found;
    }
}
