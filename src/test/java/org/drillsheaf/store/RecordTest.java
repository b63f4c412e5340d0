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
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientReader;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartClash;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What a record keeps, one desk beside the other. One suite for both databases. */
@ParameterizedClass
@EnumSource(Engines.class)
final class RecordTest {
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));
    private static final String WHO = "Tamsin Rook";
    private static final String DEPTH = "/screen/squat-depth/value";
    private static final String DROP = "/screen/thigh-drop/left";
    private static final String TUCKS = "/screen/squat-depth/tucks";

    @Parameter
    Engines engine;

    @TempDir
    Path folder;

    private final Passphrase passphrase = Engines.passphrase();
    private StoreAddress address;
    private Store store;

    @BeforeEach
    void anEmptyRecord() {
        address = engine.address(folder);
        store = Store.create(address, passphrase, Engines.CLOCK);
    }

    @AfterEach
    void close() {
        store.close();
        passphrase.close();
    }

    /** Another window on the same record; on a server it may as well stand in another room. */
    private Store otherDesk() {
        return Store.open(address, passphrase, Engines.CLOCK);
    }

    private static UUID odile(Store store) {
        return store.clients().add(Engines.client("odile-farrant"), WHO);
    }

    private static Part visit(Store store, UUID client) {
        return store.clients().load(client).orElseThrow().part(VISIT).orElseThrow();
    }

    @Test
    void whoHasTheRecordOpenIsToldOnAServer() {
        assertThat(store.openDesks()).hasSize(engine == Engines.SERVER ? 1 : 0);
    }

    @Test
    void aClientComesBackAsTheCommandLineReadsIt() {
        UUID client = odile(store);
        String kept = store.clients().load(client).orElseThrow().yaml();
        assertThat(read(kept)).isEqualTo(read(Engines.sample("odile-farrant")));
        assertThat(Engines.text(kept).parts())
                .isEqualTo(Engines.client("odile-farrant").parts());
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

    @Test
    void whatWasSavedIsThereAfterOpeningAgain() {
        UUID client = odile(store);
        Part before = visit(store, client);
        assertThat(store.clients()
                        .save(
                                client,
                                VISIT,
                                before.version(),
                                before.content().orElseThrow().with(DEPTH, 7),
                                WHO))
                .isEqualTo(new SaveResult.Saved(before.version() + 1));
        store.close();
        store = Store.open(address, passphrase, Engines.CLOCK);
        assertThat(visit(store, client).content().orElseThrow().value(DEPTH)).contains("7");
        assertThat(store.clients().versions(client, VISIT)).hasSize(2);
    }

    @Test
    void twoDesksThatChangeOnePartBothKeepTheirWordsAndSeeThemFieldByField() {
        UUID client = odile(store);
        Part base = visit(store, client);
        Content start = base.content().orElseThrow();
        try (Store other = otherDesk()) {
            other.clients()
                    .save(client, VISIT, base.version(), start.with(DEPTH, 7).with(TUCKS, "no"), "Joran Vale");
            PartClash clash = ((SaveResult.Clashed) store.clients()
                            .save(
                                    client,
                                    VISIT,
                                    base.version(),
                                    start.with(DEPTH, 9).with(DROP, -7),
                                    WHO))
                    .clash();
            assertThat(clash.fields())
                    .containsExactly(
                            field(start, TUCKS, start.value(TUCKS).orElseThrow(), "no", PartClash.ChangedBy.THEM),
                            field(start, DEPTH, "9", "7", PartClash.ChangedBy.BOTH),
                            field(start, DROP, "-7", "-8", PartClash.ChangedBy.ME));
            assertThat(clash.theirs().savedBy()).isEqualTo("Joran Vale");
            assertThat(clash.mineBy()).isEqualTo(WHO);
            assertThat(other.clients().openClashes(client))
                    .as("the other desk sees it too")
                    .containsExactly(clash);

            other.clients().settle(clash, start.with(DEPTH, 8).with(DROP, -7).with(TUCKS, "no"), "Joran Vale");
            assertThat(store.clients().openClashes(client)).isEmpty();
            assertThat(visit(store, client).content().orElseThrow().value(DEPTH))
                    .contains("8");
            assertThat(depths(client)).as("both are kept as versions").startsWith("8", "9", "7");
        }
    }

    private static PartClash.Field field(
            Content start, String path, String mine, String theirs, PartClash.ChangedBy changedBy) {
        return new PartClash.Field(path, start.value(path), Optional.of(mine), Optional.of(theirs), changedBy);
    }

    private List<String> depths(UUID client) {
        return store.clients().versions(client, VISIT).stream()
                .map(part -> part.content().orElseThrow().value(DEPTH).orElseThrow())
                .toList();
    }

    @Test
    void fourDesksLoseNoEdit() throws Exception {
        int desks = 4;
        int edits = 25;
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

    @Test
    void whatAnotherDeskSavesIsHeardSeenAndFoundWithinTwoSeconds() throws Exception {
        UUID client = odile(store);
        store.search().warmUp();
        BlockingQueue<AuditEntry> heard = new LinkedBlockingQueue<>();
        store.changes().listen(heard::addAll);
        try (Store other = otherDesk()) {
            Part block = block(other, client);
            other.clients()
                    .save(
                            client,
                            PartKey.CLIENT,
                            1,
                            block.content().orElseThrow().with("/name", "Zoë Mirande"),
                            WHO);
        }
        AuditEntry entry = heard.poll(2, TimeUnit.SECONDS);
        assertThat(entry).isNotNull().satisfies(e -> {
            assertThat(e.record()).isEqualTo(client.toString());
            assertThat(e.part()).isEqualTo("client");
            assertThat(e.version()).isEqualTo(2);
        });
        assertThat(block(store, client).content().orElseThrow().value("/name")).contains("Zoë Mirande");
        assertThat(store.search().clients("zoe", 10)).hasSize(1);
    }

    private static Part block(Store store, UUID client) {
        return store.clients().load(client).orElseThrow().part(PartKey.CLIENT).orElseThrow();
    }

    @Test
    void theAuditSaysWhoWhenWhichRecordAndFieldsAndNeverValues() {
        UUID client = odile(store);
        List<AuditEntry> entries = store.audit().of(client.toString());
        assertThat(entries).extracting(AuditEntry::part).containsExactly("client", "conditions", VISIT.text());
        assertThat(entries).allSatisfy(entry -> {
            assertThat(entry.who()).isEqualTo(WHO);
            assertThat(entry.time()).isEqualTo(Engines.CLOCK.instant());
            assertThat(entry.deed()).isEqualTo(AuditEntry.Deed.ADDED);
        });
        assertThat(entries.toString())
                .contains("thigh-drop")
                .doesNotContain("Odile")
                .doesNotContain("Farrant");

        Content visit = visit(store, client).content().orElseThrow();
        store.clients().save(client, VISIT, 1, visit.with(DEPTH, 7_351), "Joran Vale");
        List<AuditEntry> after = store.audit().of(client.toString());
        assertThat(after).startsWith(entries.toArray(AuditEntry[]::new)).hasSize(4);
        assertThat(after.get(3).who()).isEqualTo("Joran Vale");
        assertThat(after.get(3).fields()).containsExactly(DEPTH);
        assertThat(after.get(3).toString()).doesNotContain("7351");
        assertThat(store.audit().firstBreak()).isEmpty();
    }

    @Test
    void aDocumentThatWasHandedOutComesBackByteForByte() {
        byte[] pdf = "%PDF-1.7 a page".getBytes(StandardCharsets.US_ASCII);
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

    @Test
    void aNameIsFoundWhileItIsTypedWithoutAccentsOrCase() {
        UUID client = store.clients()
                .add(
                        Engines.text(
                                Engines.sample("odile-farrant").replace("name: Odile Farrant", "name: Odíle Fárrant")),
                        WHO);
        assertThat(store.search().clients("FARR odi", 10))
                .extracting(line -> line.key())
                .containsExactly(client);
        assertThat(store.search().clients("farrow", 10)).isEmpty();
    }

    @Test
    void aNewNameIsFoundInItsPlaceAndTheOldOneNoLonger() {
        UUID client = odile(store);
        for (String id : List.of("b", "a")) { // two that are called the same, and stay
            String other = Engines.sample("odile-farrant").replace("id: odile-farrant", "id: " + id);
            store.clients().add(Engines.text(other), WHO);
        }
        assertThat(store.search().clients("odile", 10)).hasSize(3);
        Part block = block(store, client);
        Content renamed = block.content().orElseThrow().with("/name", "Zoë Mirande");
        store.clients().save(client, PartKey.CLIENT, block.version(), renamed, WHO);
        store.search().refresh(client);
        assertThat(store.search().clients("mira", 10))
                .extracting(line -> line.key())
                .containsExactly(client);
        assertThat(store.search().clients("farrant odile", 10))
                .as("her id still says so, and the names come first")
                .extracting(line -> line.name())
                .containsExactly("Odile Farrant", "Odile Farrant", "Zoë Mirande");
    }

    @Test
    void oneIdIsOneClient() {
        odile(store);
        assertThatThrownBy(() -> odile(store)).isInstanceOfSatisfying(StoreFailure.class, failure -> assertThat(
                        failure.problem().what())
                .contains("already a client with this id"));
        assertThat(store.clients().list()).hasSize(1);
    }
}
