package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.drillsheaf.store.TestServer;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record from the command line. */
class StoreCommandTest {
    @TempDir
    private Path folder;

    private String record;
    private Path key;

    @BeforeEach
    void aRecordWithTwoClients() throws IOException {
        record = folder.resolve("record.mv.db").toString();
        key = secret("key", "six otters on a wet brook");
        createAndAdd();
    }

    private void createAndAdd() {
        assertThat(CommandRun.of("store", "create", record, "--passphrase-file", key.toString()))
                .satisfies(run -> assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE));
        CommandRun added = store("add", "samples/clients/odile-farrant.yaml", "samples/clients/edwin-tarrow.yaml");
        assertThat(added.out()).contains("Added odile-farrant", "Added edwin-tarrow");
    }

    /** The address of an empty database on a real server, as a clinic would write it. */
    private static String server() {
        StoreAddress.Server address = TestServer.emptyDatabase();
        return address.url() + "?user=" + address.user();
    }

    private Path secret(String name, String words) throws IOException {
        Path file = Files.writeString(folder.resolve(name), words + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        return file;
    }

    private CommandRun store(String command, String... more) {
        List<String> arguments = new ArrayList<>(List.of(
                "store", command, "--store", record, "--passphrase-file", key.toString(), "--coach", "Tamsin Rook"));
        arguments.addAll(List.of(more));
        return CommandRun.of(arguments.toArray(String[]::new));
    }

    private CommandRun done(String command, String... more) {
        CommandRun run = store(command, more);
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        return run;
    }

    @Test
    void takesAClientInOnceAndThenOnlyWhatIsNew() throws IOException {
        assertThat(done("add", "samples/clients/odile-farrant.yaml").out()).contains("Nothing new about odile-farrant");
        Path changed = Files.writeString(
                folder.resolve("odile.yaml"),
                Files.readString(Path.of("samples/clients/odile-farrant.yaml"))
                        .replace("stature-cm: 168", "stature-cm: 169"));
        assertThat(done("add", changed.toString()).out()).contains("Saved odile-farrant: 1 part");
    }

    @Test
    void saysWhatIsThereAndThatItIsWhole() {
        assertThat(done("status").out()).contains("2 clients", "none yet").doesNotContain("Odile");
        assertThat(done("verify", "--sums").out()).contains("The record is whole", "client_part_version");
    }

    @Test
    void findsClientsAndEveryEditionOfADrillByTheBeginningsOfWords() {
        assertThat(done("find", "farr", "ODI").out()).contains("client  odile-farrant: Odile Farrant, born 1979");
        CommandRun nobody = store("find", "heel", "sli");
        assertThat(nobody.code()).isEqualTo(ExitCode.CANNOT);
        assertThat(nobody.out()).contains("Nobody and no drill in the record is called “heel sli”.");
        CommandRun built = CommandRun.of(
                "build",
                "odile-farrant",
                "--store",
                record,
                "--passphrase-file",
                key.toString(),
                "--coach",
                "Tamsin Rook",
                "--out",
                folder.toString());
        assertThat(built.code()).as(built.err()).isEqualTo(ExitCode.DONE);
        assertThat(done("find", "heel", "sli").out())
                .as("the whole catalogue is kept, not only the drills of the program")
                .contains("drill   lying-heel-slide: version ", ", kept ", " by Tamsin Rook");
        assertThat(done("find", "talones").out()).as("in any language").contains("drill   ");
    }

    @Test
    void aBackupIsTakenBackAndTheFileBeforeIsSetAside() throws IOException {
        done("backup", "--every", "30");
        assertThat(done("status").out()).contains("one every 30 minutes", "record-backups");
        done("add", "samples/clients/lise-varga.yaml");
        assertThat(done("restore").out()).contains("Restored", "record-aside-");
        assertThat(done("status").out()).contains("2 clients");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .anyMatch(name -> name.startsWith("record-aside-"))
                    .noneMatch(name -> name.contains("-new"));
        }
    }

    private Path backup() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("record-backups"))) {
            return files.filter(file -> file.toString().endsWith(".mv.db"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void anErasedClientStaysErasedWhenAnOldBackupIsTakenBack() throws IOException {
        done("backup");
        Path backup = backup();
        assertThat(store("erase-client", "odile-farrant").err()).contains("the id was not repeated");
        assertThat(done("erase-client", "odile-farrant", "--yes", "odile-farrant")
                        .out())
                .contains("hold the client until");
        assertThat(done("restore", backup.toString()).out()).contains("Erased again: 1 client");
        assertThat(done("status").out()).contains("1 clients", "by Tamsin Rook: client");
        assertThat(store("export-client", "odile-farrant", "--out", folder + "/odile.zip")
                        .err())
                .contains("No client of the record is called so");
    }

    @Test
    void oneClientIsExportedByNameIntoAFileForTheOwnersEyes() throws IOException {
        Path archive = folder.resolve("odile.zip");
        done("export-client", "Odile", "--out", archive.toString());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(archive)))
                .isEqualTo("rw-------");
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            assertThat(zip.getEntry("index.html")).isNotNull();
            assertThat(new String(
                            zip.getInputStream(zip.getEntry("client.yaml")).readAllBytes()))
                    .contains("Odile Farrant");
        }
    }

    @Test
    void aCopyAgreesWithTheRecord() {
        String copy = folder.resolve("copy.mv.db").toString();
        CommandRun run = done("copy", copy, "--target-passphrase-file", key.toString());
        assertThat(run.out()).contains("counts and checksums of all 18 tables agree");
        record = copy;
        assertThat(done("status").out()).contains("2 clients");
    }

    @Test
    void aCopyGoesToAServerAndBackWithEveryCountAndChecksum() {
        String file = record;
        List<String> sums = sums();
        String server = server();
        assertThat(done("copy", server, "--target-passphrase-file", key.toString())
                        .out())
                .contains("counts and checksums of all 18 tables agree");
        record = server;
        assertThat(sums()).isEqualTo(sums);
        String back = folder.resolve("back.mv.db").toString();
        done("copy", back, "--target-passphrase-file", key.toString());
        record = back;
        assertThat(sums()).isEqualTo(sums);
        record = file;
        assertThat(store("copy", server, "--target-passphrase-file", key.toString())
                        .err())
                .contains("There is already something in this record");
    }

    /** Of each table, without the audit: that a copy was made stands in it. */
    private List<String> sums() {
        List<String> sums = done("verify", "--sums")
                .out()
                .lines()
                .filter(line -> !line.matches("(audit|ledger|The record) .*"))
                .toList();
        assertThat(sums).hasSize(16);
        return sums;
    }

    @Test
    void aRecordOnAServerIsUsedAsOneInAFile() throws IOException {
        record = server();
        createAndAdd();
        done("export-client", "Odile", "--out", folder.resolve("odile.zip").toString());
        try (ZipFile zip = new ZipFile(folder.resolve("odile.zip").toFile())) {
            assertThat(zip.getEntry("client.yaml")).isNotNull();
        }
        assertThat(done("erase-client", "odile-farrant", "--yes", "odile-farrant")
                        .out())
                .contains("Ask whoever runs the server how long its backups are kept");
        assertThat(done("status").out())
                .contains("1 clients", "Backups: made by whoever runs the server", "by Tamsin Rook: client")
                .doesNotContain("Odile", "Edwin");
        assertThat(done("verify").out()).contains("The record is whole");
        for (String forFiles : List.of("backup", "restore", "passphrase")) {
            CommandRun refused = store(forFiles);
            assertThat(refused.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(refused.err()).contains(forFiles + " is for a record in a file", "Ask whoever runs the server");
        }
    }

    @Test
    void aBackupIsLookedIntoAndStaysAsItIs() throws IOException {
        done("backup");
        done("add", "samples/clients/lise-varga.yaml");
        Path backup = backup();
        byte[] before = Files.readAllBytes(backup);
        record = backup.toString();
        assertThat(done("status").out()).contains("2 clients");
        assertThat(store("add", "samples/clients/lise-varga.yaml").err()).contains("Nothing can be written there");
        assertThat(backup).hasBinaryContent(before);
    }

    @Test
    void thePassphraseIsChangedAndTheOldOneOpensNothing() throws IOException {
        Path fresh = secret("fresh", "a lantern under eleven willows");
        done("passphrase", "--new-passphrase-file", fresh.toString());
        CommandRun old = store("status");
        assertThat(old.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(old.err())
                .contains("The passphrase does not open this record")
                .doesNotContain("otters");
        key = fresh;
        assertThat(done("status").out()).contains("2 clients");
    }

    @Test
    void aPassphraseThatOthersCanReadOrThatIsTooShortIsRefused() throws IOException {
        Path open = secret("open", "six otters on a wet brook");
        Files.setPosixFilePermissions(open, PosixFilePermissions.fromString("rw-r--r--"));
        key = open;
        assertThat(store("status").err()).contains("Others may read this file", "chmod 600");
        CommandRun shortOne = CommandRun.of(
                "store",
                "create",
                folder + "/other",
                "--passphrase-file",
                secret("s", "otters").toString());
        assertThat(shortOne.err()).contains("shorter than 12 letters");
        assertThat(folder.resolve("other.mv.db")).doesNotExist();
    }

    @Test
    void aPasswordInTheAddressIsRefused() {
        record = "jdbc:postgresql://localhost/clinic?user=desk&password=otters";
        assertThat(store("status").err())
                .contains("The address holds a password")
                .doesNotContain("otters");
    }

    @Test
    void aRecordThatIsNotThereIsToldWithoutAStackTrace() {
        record = folder.resolve("nowhere").toString();
        CommandRun run = store("status");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(run.err())
                .contains("There is no record here", "drillsheaf store create")
                .doesNotContain("Exception");
    }
}
