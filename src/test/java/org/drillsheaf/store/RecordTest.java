package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientReader;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartClash;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One suite for both databases. */
final class RecordTest {
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));
    private static final String WHO = "Tamsin Rook";

    @TempDir
    Path folder;

    private static ClientText text(String file) {
        Problems problems = new Problems();
        return ClientText.parse("odile-farrant.yaml", file, problems).orElseThrow();
    }

    private static UUID odile(Store store) {
        return store.clients().add(text(Engines.sample("odile-farrant")), WHO);
    }

    private static Part visit(Store store, UUID client) {
        return store.clients().load(client).orElseThrow().part(VISIT).orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void aClientComesBackAsTheCommandLineReadsIt(Engines engine) {
        StoreAddress address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            UUID client = odile(store);
            String kept = store.clients().load(client).orElseThrow().yaml();
            assertThat(read(kept)).isEqualTo(read(Engines.sample("odile-farrant")));
            assertThat(text(kept).parts())
                    .isEqualTo(text(Engines.sample("odile-farrant")).parts());
        }
    }

    private static Client read(String file) {
        Problems problems = new Problems();
        Folders folders = new Folders(Path.of(""), Path.of("house"));
        Knowledge knowledge = Knowledge.read(folders, problems).orElseThrow();
        Client client = YamlNode.parse("odile-farrant.yaml", file, problems)
                .flatMap(root -> new ClientReader(knowledge.clientSchema(), knowledge.knownIds()).read(root, problems))
                .orElseThrow()
                .client();
        assertThat(problems.all()).isEmpty();
        return client;
    }

    @ParameterizedTest
    @EnumSource
    void whatWasSavedIsThereAfterOpeningAgain(Engines engine) {
        StoreAddress address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase()) {
            UUID client;
            try (Store store = Store.create(address, passphrase, Engines.CLOCK)) {
                client = odile(store);
                Part before = visit(store, client);
                Content changed = before.content().orElseThrow().with("/screen/squat-depth/value", 7);
                assertThat(store.clients().save(client, VISIT, before.version(), changed, WHO))
                        .isEqualTo(new SaveResult.Saved(before.version() + 1));
            }
            try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
                assertThat(visit(store, client).content().orElseThrow().value("/screen/squat-depth/value"))
                        .contains("7");
                assertThat(store.clients().versions(client, VISIT)).hasSize(2);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void twoDesksThatChangeOnePartBothKeepTheirWords(Engines engine) {
        StoreAddress address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            UUID client = odile(store);
            Part base = visit(store, client);
            Content start = base.content().orElseThrow();
            store.clients()
                    .save(client, VISIT, base.version(), start.with("/screen/squat-depth/value", 7), "Joran Vale");
            SaveResult second = store.clients()
                    .save(client, VISIT, base.version(), start.with("/screen/squat-depth/value", 9), WHO);
            PartClash clash = ((SaveResult.Clashed) second).clash();
            assertThat(clash.fields())
                    .containsExactly(new PartClash.Field(
                            "/screen/squat-depth/value",
                            start.value("/screen/squat-depth/value"),
                            Optional.of("9"),
                            Optional.of("7"),
                            PartClash.ChangedBy.BOTH));
            assertThat(store.clients().openClashes(client)).hasSize(1);
            store.clients().settle(clash, clash.mine().orElseThrow(), WHO);
            assertThat(store.clients().openClashes(client)).isEmpty();
            assertThat(visit(store, client).content().orElseThrow().value("/screen/squat-depth/value"))
                    .contains("9");
        }
    }

    @ParameterizedTest
    @EnumSource
    void fourDesksLoseNoEdit(Engines engine) throws Exception {
        StoreAddress address = engine.address(folder);
        int desks = 4;
        int edits = 25;
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            UUID client = odile(store);
            AtomicInteger kept = new AtomicInteger();
            List<Thread> threads = new ArrayList<>();
            for (int desk = 0; desk < desks; desk++) {
                String field = "/observed/desk-" + desk;
                threads.add(new Thread(() -> {
                    for (int edit = 1; edit <= edits; edit++) {
                        SaveResult result;
                        do {
                            Part now = visit(store, client);
                            result = store.clients()
                                    .save(
                                            client,
                                            VISIT,
                                            now.version(),
                                            now.content().orElseThrow().with(field, edit),
                                            WHO);
                        } while (!(result instanceof SaveResult.Saved));
                        kept.incrementAndGet();
                    }
                }));
            }
            threads.forEach(Thread::start);
            for (Thread thread : threads) {
                thread.join();
            }
            assertThat(kept).hasValue(desks * edits);
            Part last = visit(store, client);
            assertThat(last.version()).isEqualTo(1 + desks * edits);
            for (int desk = 0; desk < desks; desk++) {
                assertThat(last.content().orElseThrow().value("/observed/desk-" + desk))
                        .contains(Integer.toString(edits));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void anotherDesksSaveIsHeardWithinTwoSeconds(Engines engine) throws Exception {
        StoreAddress address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            CountDownLatch heard = new CountDownLatch(1);
            List<AuditEntry> entries = new ArrayList<>();
            store.changes().listen(news -> {
                entries.addAll(news);
                heard.countDown();
            });
            UUID client = odile(store);
            assertThat(heard.await(2, TimeUnit.SECONDS)).isTrue();
            assertThat(entries).allMatch(entry -> entry.record().equals(client.toString()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void theAuditNamesFieldsAndNeverValues(Engines engine) {
        StoreAddress address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            UUID client = odile(store);
            List<AuditEntry> entries = store.audit().of(client.toString());
            assertThat(entries).extracting(AuditEntry::part).containsExactly("client", "conditions", VISIT.text());
            assertThat(entries.toString())
                    .contains("thigh-drop")
                    .doesNotContain("Odile")
                    .doesNotContain("Farrant");
            assertThat(store.audit().firstBreak()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aDocumentThatWasHandedOutComesBackByteForByte(Engines engine) {
        StoreAddress address = engine.address(folder);
        byte[] pdf = "%PDF-1.7 a page".getBytes(StandardCharsets.US_ASCII);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            UUID client = odile(store);
            HandedOut kept = store.documents()
                    .handOut(
                            new HandedOut.Draft(
                                    client,
                                    Optional.empty(),
                                    "referral-note",
                                    LocalDate.of(2026, 3, 5),
                                    "en",
                                    "A4",
                                    "0.1.0",
                                    Map.of(
                                            "client.yaml",
                                            Engines.sample("odile-farrant").getBytes(StandardCharsets.UTF_8)),
                                    pdf),
                            WHO);
            HandedOut found = store.documents().list(client).get(0);
            assertThat(found).isEqualTo(kept);
            assertThat(store.documents().pdf(found)).isEqualTo(pdf);
            assertThat(store.documents().inputs(found).get("client.yaml"))
                    .asString(StandardCharsets.UTF_8)
                    .isEqualTo(Engines.sample("odile-farrant"));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aNameIsFoundWhileItIsTypedWithoutAccentsOrCase(Engines engine) {
        StoreAddress address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            UUID client = store.clients()
                    .add(
                            text(Engines.sample("odile-farrant").replace("name: Odile Farrant", "name: Odíle Fárrant")),
                            WHO);
            assertThat(store.search().clients("FARR odi", 10))
                    .extracting(line -> line.key())
                    .containsExactly(client);
            assertThat(store.search().clients("farrow", 10)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void oneIdIsOneClient(Engines engine) {
        StoreAddress address = engine.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK)) {
            odile(store);
            assertThatThrownBy(() -> odile(store)).isInstanceOfSatisfying(StoreFailure.class, failure -> assertThat(
                            failure.problem().what())
                    .contains("already a client with this id"));
            assertThat(store.clients().list()).hasSize(1);
        }
    }
}
