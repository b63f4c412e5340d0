package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only a file of one's own can suffer. */
final class RecordFileTest {
    @TempDir
    Path folder;

    private StoreAddress.File address;

    @BeforeEach
    void aRecordWithOneClient() {
        address = new StoreAddress.File(folder.resolve("record.mv.db"));
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            store.clients()
                    .add(
                            ClientText.parse("odile-farrant.yaml", Engines.sample("odile-farrant"), new Problems())
                                    .orElseThrow(),
                            "Tamsin Rook");
        }
    }

    private StoreFailure failure(Passphrase passphrase) {
        try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
            throw new AssertionError("opened " + store.address());
        } catch (StoreFailure e) {
            return e;
        }
    }

    @Test
    void noNameStandsInClearInTheFolder() throws Exception {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
                assertThat(bytes).as(file.toString()).doesNotContain("Farrant").doesNotContain("farrant");
            }
        }
    }

    @Test
    void aWrongPassphraseIsToldAndTheFileStaysAsItIs() throws Exception {
        byte[] before = Files.readAllBytes(address.file());
        try (Passphrase wrong = Passphrase.of("another".toCharArray())) {
            assertThat(failure(wrong).kind()).isEqualTo(StoreFailure.Kind.WRONG_PASSPHRASE);
        }
        assertThat(Files.readAllBytes(address.file())).isEqualTo(before);
    }

    @Test
    void aFileThatIsOpenElsewhereIsNotOpenedTwice() throws Exception {
        Process other = SavingDesk.start(address);
        try (Passphrase passphrase = Engines.passphrase()) {
            other.inputReader().readLine();
            assertThat(failure(passphrase).kind()).isEqualTo(StoreFailure.Kind.IN_USE);
        } finally {
            other.destroyForcibly().waitFor();
        }
    }

    @Test
    void whatWasSavedOutlivesAProcessThatIsKilled() throws Exception {
        Random random = new Random(20260305);
        for (int round = 0; round < 4; round++) {
            Process desk = SavingDesk.start(address);
            BufferedReader said = desk.inputReader();
            long saved = 0;
            int saves = 10 + random.nextInt(80);
            for (int i = 0; i < saves; i++) {
                saved = Long.parseLong(said.readLine());
            }
            // Through its handle, which leaves open what it said: all it said before it died counts as well.
            desk.toHandle().destroyForcibly();
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                saved = Long.parseLong(line);
            }
            desk.waitFor();
            try (Passphrase passphrase = Engines.passphrase();
                    Store store = Store.open(address, passphrase, Engines.CLOCK)) {
                assertThat(SavingDesk.visit(store).version()).isBetween(saved, saved + 1);
                assertThat(store.audit().firstBreak()).isEmpty();
            }
        }
    }

    @Test
    void aRecordIsNeverMadeOverAnother() {
        try (Passphrase passphrase = Engines.passphrase()) {
            assertThatThrownBy(() -> Store.create(address, passphrase, Engines.CLOCK))
                    .isInstanceOf(StoreFailure.class);
            try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
                assertThat(store.clients().list()).hasSize(1);
            }
        }
    }
}
