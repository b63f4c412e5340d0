package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.record.House;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.FileKey;
import org.drillsheaf.store.sql.Migrations;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.Backup;
import org.drillsheaf.store.upkeep.BackupFolder;
import org.drillsheaf.store.upkeep.BackupPlan;
import org.drillsheaf.store.upkeep.Restoring;
import org.drillsheaf.store.upkeep.Watcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups of a record's file: made while it is used, kept by a plan, taken back. */
final class BackupTest {
    private static final String WHO = "Tamsin Rook";
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));

    @TempDir
    Path folder;

    private final Passphrase passphrase = Engines.passphrase();
    private StoreAddress.File address;
    private UUID odile;

    @BeforeEach
    void aRecordWithTwoClients() {
        address = new StoreAddress.File(folder.resolve("record.mv.db"));
        try (Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            odile = add(store, "odile-farrant");
            add(store, "edwin-tarrow");
        }
    }

    @AfterEach
    void forget() {
        passphrase.close();
    }

    private static UUID add(Store store, String sample) {
        return store.clients().add(Engines.client(sample), WHO);
    }

    private static Clock at(String time) {
        return Clock.fixed(Instant.parse(time), ZoneOffset.UTC);
    }

    @Test
    void aBackupMadeWhileSomebodySavesIsWholeAndCanBeLookedInto() throws Exception {
        try (Store store = Store.open(address, passphrase, Clock.systemUTC())) {
            AtomicBoolean enough = new AtomicBoolean();
            Thread desk = new Thread(() -> {
                while (!enough.get()) {
                    Part now = store.clients()
                            .load(odile)
                            .orElseThrow()
                            .part(VISIT)
                            .orElseThrow();
                    store.clients()
                            .save(
                                    odile,
                                    VISIT,
                                    now.version(),
                                    now.content().orElseThrow().with("/observed/edit", now.version()),
                                    WHO);
                }
            });
            desk.start();
            List<Backup> made = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                made.add(store.backups().make());
            }
            enough.set(true);
            desk.join();
            assertThat(store.backups().list()).containsExactlyInAnyOrderElementsOf(made);
            long before = 0;
            for (Backup backup : made) {
                try (Store look = Store.look(backup.address(), passphrase, Engines.CLOCK)) {
                    assertThat(look.verify(Watcher.NONE).faults()).isEmpty();
                    assertThat(look.audit().newest()).isGreaterThanOrEqualTo(before);
                    before = look.audit().newest();
                    assertThatThrownBy(() -> add(look, "lise-varga"))
                            .isInstanceOfSatisfying(StoreFailure.class, failure -> assertThat(failure.kind())
                                    .isEqualTo(StoreFailure.Kind.READ_ONLY));
                }
            }
            assertThat(before).isGreaterThan(6);
        }
    }

    @Test
    void oneThatWasBrokenOffIsReplacedByTheNext() throws Exception {
        try (Store store = Store.open(address, passphrase, Clock.systemUTC())) {
            Path backups = store.backups().make().address().folder();
            for (String half : List.of("record-part.mv.db", "record-part.mv.db.zip")) {
                Files.write(backups.resolve(half), new byte[50_000]);
            }
            store.backups().make();
            assertThat(store.backups().list()).hasSize(2);
            try (Stream<Path> files = Files.list(backups)) {
                assertThat(files.map(Path::getFileName).map(Path::toString)).noneMatch(name -> name.contains("part"));
            }
        }
    }

    @Test
    void backupsAreMadeByThemselvesWhileTheRecordIsOpen() throws Exception {
        List<StoreFailure> failures = new ArrayList<>();
        try (Store store = Store.open(address, passphrase, Clock.systemUTC())) {
            store.backups().keepMaking(failures::add);
            for (int tries = 0; store.backups().list().isEmpty() && tries < 200; tries++) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
        }
        assertThat(new BackupFolder(address).list()).hasSize(1);
        try (Store store = Store.open(address, passphrase, Clock.systemUTC())) {
            store.backups().keepMaking(failures::add);
            TimeUnit.MILLISECONDS.sleep(500);
        }
        assertThat(new BackupFolder(address).list()).as("not due yet").hasSize(1);
        assertThat(failures).isEmpty();
    }

    @Test
    void thePlanKeepsTheNewestOneADayAndOneAWeekAndNothingLonger() {
        BackupPlan plan = new BackupPlan(60, 3, 4, 3);
        Instant now = Instant.parse("2026-03-20T12:00:00Z"); // a Friday
        List<Instant> made = new ArrayList<>();
        for (int hours = 0; hours < 24 * 40; hours += 6) {
            made.add(now.minus(Duration.ofHours(hours)));
        }
        List<Instant> kept = new ArrayList<>(made);
        kept.removeAll(plan.expired(made, now));
        assertThat(kept)
                .containsExactly(
                        Instant.parse("2026-03-20T12:00:00Z"),
                        Instant.parse("2026-03-20T06:00:00Z"),
                        Instant.parse("2026-03-20T00:00:00Z"),
                        Instant.parse("2026-03-19T18:00:00Z"),
                        Instant.parse("2026-03-18T18:00:00Z"),
                        Instant.parse("2026-03-17T18:00:00Z"),
                        Instant.parse("2026-03-16T18:00:00Z"),
                        Instant.parse("2026-03-15T18:00:00Z"), // last of its week
                        Instant.parse("2026-03-08T18:00:00Z"),
                        Instant.parse("2026-03-01T18:00:00Z"));
        assertThat(plan.expired(List.of(Instant.parse("2020-01-01T00:00:00Z")), now))
                .as("the only one there is")
                .isEmpty();
    }

    @Test
    void thePlanIsASettingOfTheRecordAndOldBackupsGo() {
        try (Store store = Store.open(address, passphrase, at("2026-03-05T10:00:00Z"))) {
            BackupPlan plan = new BackupPlan(30, 1, 0, 1);
            store.house().save(new House.Setting(BackupPlan.SETTING, plan.text(), 0), WHO);
            assertThat(store.backups().plan()).isEqualTo(plan);
            store.backups().make();
        }
        try (Store store = Store.open(address, passphrase, at("2026-03-20T10:00:00Z"))) {
            Backup newer = store.backups().make();
            assertThat(store.backups().list()).containsExactly(newer);
        }
    }

    @Test
    void anOlderRecordIsBroughtUpToDateAfterABackupOfIt() {
        StoreAddress.File old = new StoreAddress.File(folder.resolve("old.mv.db"));
        Engines.recordOfVersion(1, old, passphrase);
        try (Store store = Store.open(old, passphrase, Engines.CLOCK)) {
            Backup backup = store.backups().list().get(0);
            assertThatThrownBy(() -> Store.look(backup.address(), passphrase, Engines.CLOCK))
                    .isInstanceOfSatisfying(StoreFailure.class, failure -> assertThat(failure.kind())
                            .isEqualTo(StoreFailure.Kind.OLDER));
        }
        assertThat(Engines.version(old, passphrase)).contains(Migrations.NEWEST);
    }

    @Test
    void aRestoreBringsTheBackupBackAndSetsTheOldFileAside() throws Exception {
        Backup backup;
        try (Store store = Store.open(address, passphrase, at("2026-03-06T10:00:00Z"))) {
            backup = store.backups().make();
            add(store, "lise-varga");
        }
        Restoring.Outcome outcome = new Restoring(address, Engines.CLOCK).restore(backup.address(), passphrase, WHO);
        assertThat(outcome.erasedAgain()).isZero();
        try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
            assertThat(store.clients().list()).hasSize(2);
            assertThat(store.verify(Watcher.NONE).faults()).isEmpty();
            assertThat(store.audit().after(0, 100)).last().satisfies(entry -> assertThat(entry.deed())
                    .isEqualTo(AuditEntry.Deed.RESTORED));
        }
        try (Store aside =
                Store.look(new StoreAddress.File(outcome.aside().orElseThrow()), passphrase, Engines.CLOCK)) {
            assertThat(aside.clients().list()).hasSize(3);
        }
    }

    @Test
    void aRestoreRepeatsWhatWasErasedEvenWhenTheRecordItselfIsLost() throws Exception {
        Backup backup;
        try (Store store = Store.open(address, passphrase, at("2026-03-06T10:00:00Z"))) {
            backup = store.backups().make();
        }
        try (Store store = Store.open(address, passphrase, at("2026-03-07T10:00:00Z"))) {
            store.erase(odile, WHO);
            assertThat(store.backups().heldUntil(store.erasures().get(0).at())).isEqualTo("2026-05-02");
            assertThat(store.backups().list()).as("one without her was made").hasSize(2);
        }
        Files.write(address.file(), new byte[10_000]);
        Restoring.Outcome outcome = new Restoring(address, Engines.CLOCK).restore(backup.address(), passphrase, WHO);
        assertThat(outcome.erasedAgain()).isEqualTo(1);
        try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
            assertThat(store.clients().list()).extracting(client -> client.id()).containsExactly("edwin-tarrow");
            assertThat(store.erasures()).hasSize(1);
        }
    }

    /** The engine overwrites what was deleted only later; here everything is deciphered and looked through. */
    @Test
    void anErasedNameIsGoneFromTheFileItself() throws Exception {
        assertThat(deciphered()).contains("Farrant", "Tarrow");
        try (Store store = Store.open(address, passphrase, at("2026-03-07T10:00:00Z"))) {
            store.erase(odile, WHO);
        }
        assertThat(deciphered()).contains("Tarrow").doesNotContain("Farrant", "farrant");
    }

    private String deciphered() throws Exception {
        byte[] key = FileKey.of(passphrase);
        try (FileChannel plain = new org.h2.store.fs.encrypt.FileEncrypt(
                address.file().toString(), key, FileChannel.open(address.file(), StandardOpenOption.READ))) {
            ByteBuffer bytes = ByteBuffer.allocate(Math.toIntExact(plain.size()));
            while (bytes.hasRemaining() && plain.read(bytes) > 0) {}
            return new String(bytes.array(), StandardCharsets.ISO_8859_1);
        }
    }

    @Test
    void aNewPassphraseOpensTheRecordAndTheOldOneDoesNot() {
        try (Passphrase fresh = Passphrase.of("a lantern under eleven willows".toCharArray())) {
            new Restoring(address, Engines.CLOCK).changePassphrase(passphrase, fresh, WHO);
            assertThatThrownBy(() -> Store.open(address, passphrase, Engines.CLOCK))
                    .isInstanceOfSatisfying(StoreFailure.class, failure -> assertThat(failure.kind())
                            .isEqualTo(StoreFailure.Kind.WRONG_PASSPHRASE));
            try (Store store = Store.open(address, fresh, Engines.CLOCK)) {
                assertThat(store.clients().list()).hasSize(2);
                assertThat(store.verify(Watcher.NONE).faults()).isEmpty();
            }
        }
    }
}
