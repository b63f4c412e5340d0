package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.record.Coach;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.TableSum;
import org.drillsheaf.store.upkeep.Watcher;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Checking, copying, erasing and exporting a record. One suite for both databases. */
final class RecordKeptSafeTest {
    private static final String WHO = "Tamsin Rook";
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));

    @TempDir
    Path folder;

    /** A record with a client, an old version, a paper, a coach. */
    private static UUID fill(Store store) {
        UUID client = store.clients().add(Engines.client("odile-farrant"), WHO);
        Part visit = store.clients().load(client).orElseThrow().part(VISIT).orElseThrow();
        store.clients()
                .save(
                        client,
                        VISIT,
                        visit.version(),
                        visit.content().orElseThrow().with("/screen/squat-depth/value", 7),
                        WHO);
        store.documents()
                .handOut(
                        new HandedOut.Draft(
                                client,
                                Optional.empty(),
                                "referral-note",
                                LocalDate.of(2026, 3, 5),
                                "en",
                                "A4",
                                "0.1.0",
                                Map.of("client.yaml", new byte[600_000]),
                                "%PDF-1.7 Odile Farrant".getBytes(StandardCharsets.US_ASCII)),
                        WHO);
        store.programs().keepReading(client, LocalDate.of(2026, 3, 5), "extension-dominant", WHO);
        store.house().save(new Coach(WHO, true, true, 0), WHO);
        return client;
    }

    @ParameterizedTest
    @EnumSource
    void aRecordIsWholeUntilSomebodyTouchesItBehindOurBack(Engines engine) throws Exception {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(engine.address(folder), passphrase, Engines.CLOCK)) {
            fill(store);
            assertThat(store.verify(Watcher.NONE).faults()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatWasChangedBehindOurBackIsTold(Engines engine) throws Exception {
        var address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            fill(store);
            long newest = store.audit().newest();
            Map<String, String> told = new LinkedHashMap<>();
            told.put("UPDATE client_part SET body = '{}' WHERE part = 'client'", "is not what was saved");
            told.put(
                    "UPDATE content_chunk SET bytes = CAST('x' AS BYTEA) WHERE chunk = 0",
                    "are not what was put there");
            // The audit from its end on, so that each change is the first break
            told.put("DELETE FROM audit WHERE entry_number = " + newest, "The audit is broken at entry " + newest);
            told.put("DELETE FROM audit WHERE entry_number = 4", "The audit is broken at entry 4");
            told.put("UPDATE audit SET fields = '' WHERE entry_number = 3", "The audit is broken at entry 3");
            told.put("UPDATE audit SET who = 'Joran Vale' WHERE entry_number = 2", "The audit is broken at entry 2");
            for (Map.Entry<String, String> change : told.entrySet()) {
                assertThat(store.verify(Watcher.NONE).faults())
                        .as("before")
                        .noneMatch(fault -> fault.contains(change.getValue()));
                Engines.behindOurBack(address, change.getKey());
                assertThat(store.verify(Watcher.NONE).faults()).anyMatch(fault -> fault.contains(change.getValue()));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"FILE,SERVER", "SERVER,FILE", "FILE,FILE"})
    void aCopyHoldsTheSameOnEitherEngineAndBack(Engines from, Engines to) throws Exception {
        try (Passphrase passphrase = Engines.passphrase();
                Store source = Store.create(from.address(folder), passphrase, Engines.CLOCK);
                Store target = Store.create(
                        to.address(Files.createDirectory(folder.resolve("target"))), passphrase, Engines.CLOCK);
                Store back = Store.create(
                        from.address(Files.createDirectory(folder.resolve("back"))), passphrase, Engines.CLOCK)) {
            UUID client = fill(source);
            List<TableSum> sums = source.copyInto(target, WHO, Watcher.NONE);
            assertThat(target.verify(Watcher.NONE).tables()).isEqualTo(sums);
            assertThat(target.verify(Watcher.NONE).faults()).isEmpty();
            assertThat(target.clients().load(client)).isEqualTo(source.clients().load(client));
            assertThat(target.documents().pdf(target.documents().list(client).get(0)))
                    .isEqualTo(source.documents()
                            .pdf(source.documents().list(client).get(0)));
            target.copyInto(back, WHO, Watcher.NONE);
            assertThat(withoutAudit(back.verify(Watcher.NONE).tables())).isEqualTo(withoutAudit(sums));
            assertThatThrownBy(() -> source.copyInto(target, WHO, Watcher.NONE))
                    .isInstanceOfSatisfying(StoreFailure.class, failure -> assertThat(failure.kind())
                            .isEqualTo(StoreFailure.Kind.ALREADY_THERE));
        }
    }

    /** Each copying is an entry of the audit. */
    private static List<TableSum> withoutAudit(List<TableSum> sums) {
        return sums.stream()
                .filter(sum -> !List.of("ledger", "audit").contains(sum.table()))
                .toList();
    }

    /** A table that is forgotten here would be left out of every copy. */
    @ParameterizedTest
    @EnumSource
    void everyTableThatThereIsIsCopied(Engines engine) throws Exception {
        var address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase()) {
            Set<String> copied;
            try (Store store = Store.create(address, passphrase, Engines.CLOCK)) {
                copied = store.counts().keySet();
            }
            assertThat(Engines.tables(address, passphrase)).containsExactlyInAnyOrderElementsOf(copied);
        }
    }

    @ParameterizedTest
    @EnumSource
    void anErasedClientLeavesOnlyThatItHappened(Engines engine) {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(engine.address(folder), passphrase, Engines.CLOCK)) {
            UUID client = fill(store);
            store.search().warmUp();
            store.erase(client, WHO);
            assertThat(store.clients().list()).isEmpty();
            assertThat(store.clients().load(client)).isEmpty();
            assertThat(store.search().clients("odile", 10)).isEmpty();
            assertThat(store.documents().list(client)).isEmpty();
            assertThat(store.counts())
                    .containsEntry("client_part_version", 0L)
                    .containsEntry("content", 0L)
                    .containsEntry("content_chunk", 0L)
                    .containsEntry("reading", 0L);
            List<AuditEntry> audit = store.audit().of(client.toString());
            assertThat(audit.get(audit.size() - 1).deed()).isEqualTo(AuditEntry.Deed.ERASED);
            assertThat(audit.toString()).doesNotContain("Odile", "Farrant", "farrant");
            assertThat(store.verify(Watcher.NONE).faults()).isEmpty();
            assertThat(store.erasures()).extracting(e -> e.client()).containsExactly(client);
            assertThatThrownBy(() -> store.erase(client, WHO)).isInstanceOf(StoreFailure.class);
        }
    }

    @ParameterizedTest
    @EnumSource
    void oneArchiveHoldsEverythingAboutAClient(Engines engine) throws Exception {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(engine.address(folder), passphrase, Engines.CLOCK)) {
            UUID client = fill(store);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            store.archive().write(client, out, WHO);
            Map<String, byte[]> files = unzip(out.toByteArray());
            assertThat(files.keySet())
                    .contains(
                            "index.html",
                            "client.yaml",
                            "versions/visit-2026-03-05-v1.yaml",
                            "versions/visit-2026-03-05-v2.yaml",
                            "readings/2026-03-05-v1.txt",
                            "handed-out/2026-03-05-referral-note-1.pdf",
                            "handed-out/2026-03-05-referral-note-1.json",
                            "audit.json");
            String page = text(files, "index.html");
            files.keySet().stream()
                    .filter(name -> !name.equals("index.html") && !name.contains("/inputs/"))
                    .forEach(name -> assertThat(page).contains("href=\"" + name + "\""));
            assertThat(text(files, "client.yaml"))
                    .isEqualTo(store.clients().load(client).orElseThrow().yaml());
            assertThat(text(files, "handed-out/2026-03-05-referral-note-1.pdf")).contains("Odile Farrant");
            List<AuditEntry> audit = store.audit().of(client.toString());
            assertThat(audit.get(audit.size() - 1).deed()).isEqualTo(AuditEntry.Deed.EXPORTED);
        }
    }

    private static String text(Map<String, byte[]> files, String name) {
        return new String(java.util.Objects.requireNonNull(files.get(name)), StandardCharsets.UTF_8);
    }

    private static Map<String, byte[]> unzip(byte[] archive) throws Exception {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        return files;
    }
}
