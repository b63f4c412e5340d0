package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Migrations;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.sql.StoreFailure.Kind;
import org.drillsheaf.store.upkeep.BackupFolder;
import org.drillsheaf.store.upkeep.Restoring;
import org.drillsheaf.store.upkeep.TableSum;
import org.drillsheaf.store.upkeep.Watcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can befall a record's file: each fault is told in clear words, loses nothing, and the steps that it names help. */
final class RecordFaultTest {
    private static final String WHO = "Tamsin Rook";

    @TempDir
    Path folder;

    private final Passphrase passphrase = Engines.passphrase();
    private StoreAddress.File address;

    @BeforeEach
    void aRecordWithAClientAndABackup() {
        address = new StoreAddress.File(folder.resolve("record.mv.db"));
        try (Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            add(store, "odile-farrant");
            add(store, "edwin-tarrow");
            store.backups().make();
        }
    }

    @AfterEach
    void forget() {
        passphrase.close();
    }

    private static void add(Store store, String sample) {
        store.clients().add(Engines.client(sample), WHO);
    }

    private void theRecordIsWhole(int clients) {
        try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
            assertThat(store.clients().list()).hasSize(clients);
            assertThat(store.verify(Watcher.NONE).faults()).isEmpty();
        }
    }

    @Test
    void aRecordOfANewerVersionIsRefusedAndLeftAlone() {
        newest(Migrations.NEWEST + 7);
        assertThatThrownBy(() -> Store.open(address, passphrase, Engines.CLOCK))
                .isInstanceOfSatisfying(StoreFailure.class, failure -> {
                    assertThat(failure.kind()).isEqualTo(Kind.NEWER);
                    assertThat(failure.problem().what()).contains("newer version");
                    assertThat(failure.problem().remedy()).contains("Install that version", "nothing was changed");
                });
        newest(Migrations.NEWEST); // the newer program would find it as it was
        theRecordIsWhole(2);
    }

    private void newest(int version) {
        try (Database database = Database.open(address, passphrase)) {
            database.execute(
                    "UPDATE flyway_schema_history SET version = ? WHERE installed_rank ="
                            + " (SELECT MAX(installed_rank) FROM flyway_schema_history)",
                    Integer.toString(version));
        }
    }

    /** The shell lets the process write no file beyond a size; to the program that is a full disk. */
    @Test
    void aFullDiskLosesOnlyTheSaveThatIsTold() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "needs a shell that limits a file's size");
        long kilobytes = Files.size(address.file()) / 1024 + 600;
        List<String> said =
                desk(List.of("/bin/bash", "-c", "ulimit -f " + kilobytes + "; exec \"$@\"", "desk"), "grow");
        assertThat(said.get(said.size() - 1)).startsWith("DISK_FULL").contains("Free some space");
        assertThat(said.size()).as("something was saved before").isGreaterThan(1);
        long saved = Long.parseLong(said.get(said.size() - 2));
        try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
            assertThat(SavingDesk.visit(store).version()).isBetween(saved, saved + 1);
            add(store, "lise-varga"); // there is space again
        }
        theRecordIsWhole(3);
    }

    @Test
    void aReadOnlyFolderIsToldAndTheRecordStaysAsItIs() throws Exception {
        byte[] before = Files.readAllBytes(address.file());
        List<String> said = desk(readOnly(), "save");
        assertThat(said.get(said.size() - 1)).startsWith("READ_ONLY").contains("Allow writing");
        assertThat(Files.readAllBytes(address.file())).isEqualTo(before);
        assertThat(address.file().toFile().setWritable(true)).isTrue();
        theRecordIsWhole(2);
    }

    /** Rights do not bind root, a mount does; anybody else is bound by rights. */
    private List<String> readOnly() throws Exception {
        if (Files.isWritable(Path.of("/"))) {
            String mount =
                    "mount --bind '" + folder + "' '" + folder + "' && mount -o remount,bind,ro '" + folder + "'";
            List<String> apart = List.of("unshare", "--mount", "sh", "-c", mount + " && exec \"$@\"", "desk");
            List<String> trial = new ArrayList<>(apart);
            trial.add("true");
            assumeTrue(run(trial).isEmpty(), "needs the right to mount");
            return apart;
        }
        assertThat(address.file().toFile().setWritable(false)).isTrue();
        return List.of();
    }

    @Test
    void whileTheRecordIsInUseElsewhereItsNewestBackupCanBeLookedInto() throws Exception {
        Process other = SavingDesk.start(address);
        try {
            other.inputReader().readLine();
            assertThatThrownBy(() -> Store.open(address, passphrase, Engines.CLOCK))
                    .isInstanceOfSatisfying(StoreFailure.class, failure -> {
                        assertThat(failure.kind()).isEqualTo(Kind.IN_USE);
                        assertThat(failure.problem().remedy()).contains("Close that one first", "newest backup");
                    });
            assertThatThrownBy(() -> new Restoring(address, Engines.CLOCK).restore(newestBackup(), passphrase, WHO))
                    .as("nobody's open record is swapped away")
                    .isInstanceOfSatisfying(StoreFailure.class, failure -> assertThat(failure.kind())
                            .isEqualTo(Kind.IN_USE));
            try (Store look = Store.look(newestBackup(), passphrase, Engines.CLOCK)) {
                assertThat(look.clients().list()).hasSize(2);
            }
        } finally {
            other.destroyForcibly().waitFor();
        }
        theRecordIsWhole(2);
    }

    private StoreAddress.File newestBackup() {
        return new BackupFolder(address).list().get(0).address();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void aDamagedFileIsToldAndARestoreBringsEverythingBack(int seed) throws Exception {
        byte[] whole = Files.readAllBytes(address.file());
        List<TableSum> sums = sums();
        Files.write(address.file(), whole);
        Random random = new Random(seed);
        int told = 0;
        for (int round = 0; round < 5; round++) {
            byte[] damaged = damage(whole.clone(), random, round);
            Files.write(address.file(), damaged);
            Optional<Kind> kind = opened();
            if (kind.isEmpty()) {
                assertThat(sums()).as("damaged where nothing is kept").isEqualTo(sums);
                continue;
            }
            told++;
            assertThat(kind.get()).isIn(Kind.DAMAGED, Kind.WRONG_PASSPHRASE);
            Restoring.Outcome outcome =
                    new Restoring(address, Clock.systemUTC()).restore(newestBackup(), passphrase, WHO);
            assertThat(outcome.aside()).as("the damaged file is kept").isPresent();
            theRecordIsWhole(2);
        }
        assertThat(told).isPositive();
    }

    private List<TableSum> sums() {
        try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
            return store.verify(Watcher.NONE).tables();
        }
    }

    /** By turns: cut off, a page overwritten, the head overwritten, one bit, many bits. */
    private static byte[] damage(byte[] file, Random random, int kind) {
        switch (kind) {
            case 0 -> {
                return java.util.Arrays.copyOf(file, random.nextInt(file.length));
            }
            case 1 -> {
                int from = 8_192 + random.nextInt(file.length - 12_288);
                for (int i = from; i < from + 4_096; i++) {
                    file[i] = (byte) random.nextInt();
                }
            }
            case 2 -> java.util.Arrays.fill(file, 0, 4_096, (byte) random.nextInt());
            case 3 -> file[random.nextInt(file.length)] ^= (byte) (1 << random.nextInt(8));
            default -> {
                for (int i = 0; i < 400; i++) {
                    file[random.nextInt(file.length)] ^= (byte) (1 << random.nextInt(8));
                }
            }
        }
        return file;
    }

    /** What opening and reading everything says; empty when all is well. Anything but a told failure fails the test. */
    private Optional<Kind> opened() {
        try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
            boolean whole = store.verify(Watcher.NONE).isWhole();
            return whole && store.clients().list().size() == 2 ? Optional.empty() : Optional.of(Kind.DAMAGED);
        } catch (StoreFailure e) {
            assertThat(e.problem().remedy()).isNotBlank();
            return Optional.of(e.kind());
        }
    }

    /** What a desk in a process of its own says, line by line; the last line is what went wrong. */
    private List<String> desk(List<String> before, String mode) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-cp",
                System.getProperty("java.class.path"),
                FailingDesk.class.getName(),
                address.file().toString(),
                mode));
        return run(command);
    }

    private static List<String> run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        List<String> lines = process.inputReader().lines().toList();
        process.waitFor();
        return lines;
    }
}
