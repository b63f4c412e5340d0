package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.Watcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
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
            store.clients().add(Engines.client("odile-farrant"), "Tamsin Rook");
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

    /** {@code -Ddrillsheaf.saves=500} makes it as long as the promise is. */
    @Test
    void whatWasSavedOutlivesAProcessThatIsKilled(TestReporter reporter) throws Exception {
        int wanted = Integer.getInteger("drillsheaf.saves", 100);
        Random random = new Random(20260305);
        long before = 1;
        int kills = 0;
        for (long all = 0; all < wanted; kills++) {
            Process desk = SavingDesk.start(address);
            BufferedReader said = desk.inputReader();
            long saved = before;
            for (int saves = 1 + random.nextInt(40); saves > 0; saves--) {
                saved = Long.parseLong(said.readLine());
            }
            TimeUnit.MICROSECONDS.sleep(random.nextInt(20_000)); // anywhere inside the next save
            // Through its handle, which leaves open what it said: all it said before it died counts as well.
            desk.toHandle().destroyForcibly();
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                saved = Long.parseLong(line);
            }
            desk.waitFor();
            try (Passphrase passphrase = Engines.passphrase();
                    Store store = Store.open(address, passphrase, Engines.CLOCK)) {
                long kept = SavingDesk.visit(store).version();
                assertThat(kept).isBetween(saved, saved + 1);
                assertThat(store.verify(Watcher.NONE).faults()).isEmpty();
                all += saved - before;
                before = kept;
            }
        }
        reporter.publishEntry(Map.of("kills", Integer.toString(kills), "saves", Long.toString(before - 1)));
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
