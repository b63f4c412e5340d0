package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The network goes while a client is open: what is saved waits on this machine, and goes to the server in its turn. */
final class ServerAwayTest {
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));
    private static final String WHO = "Tamsin Rook";
    private static final String DEPTH = "/screen/squat-depth/value";

    @TempDir
    Path folder;

    private final Passphrase passphrase = Engines.passphrase();
    private StoreAddress.Server direct;
    private StoreAddress.Server throughWire;
    private Wire wire;
    private Store other;
    private UUID odile;

    @BeforeEach
    void aServerAndAWireToIt() throws Exception {
        direct = (StoreAddress.Server) Engines.SERVER.address(folder);
        int port = URI.create(direct.url().substring("jdbc:".length())).getPort();
        wire = new Wire(port);
        throughWire = new StoreAddress.Server(
                direct.url().replace(":" + port, ":" + wire.port()) + "?connectTimeout=1&loginTimeout=1",
                direct.user());
        other = Store.create(direct, passphrase, Engines.CLOCK);
        odile = other.clients().add(Engines.client("odile-farrant"), WHO);
    }

    @AfterEach
    void end() throws Exception {
        other.close();
        wire.close();
        passphrase.close();
    }

    private Part visit() {
        return other.clients().load(odile).orElseThrow().part(VISIT).orElseThrow();
    }

    private static long save(Store store, UUID client, long base, Content content) {
        SaveResult.Saved saved = (SaveResult.Saved) store.clients().save(client, VISIT, base, content, WHO);
        assertThat(saved.waits()).isTrue();
        return saved.version();
    }

    /** Saves three times without the server, each on top of the one before. */
    private void saveThreeTimes(Store desk, Content start) {
        long version = 1;
        for (int depth = 11; depth <= 13; depth++) {
            version = save(desk, odile, version, start.with(DEPTH, depth));
        }
        assertThat(version).isEqualTo(4);
        assertThat(desk.clients().waiting()).isEqualTo(3);
    }

    private static void untilNoneWaits(Store desk) throws InterruptedException {
        for (int tries = 0; desk.clients().waiting() > 0 && tries < 600; tries++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
        assertThat(desk.clients().waiting()).isZero();
    }

    private List<String> depths() {
        return other.clients().versions(odile, VISIT).stream()
                .map(part -> part.content().orElseThrow().value(DEPTH).orElseThrow())
                .toList();
    }

    @Test
    void whatWasSavedMeanwhileArrivesInItsOrder() throws Exception {
        Content start = visit().content().orElseThrow();
        try (Store desk = Store.open(throughWire, passphrase, Engines.CLOCK)) {
            desk.clients().waitWhileAway(folder);
            desk.clients().load(odile);
            wire.cut();
            saveThreeTimes(desk, start);
            assertThat(visit().version()).as("nothing has arrived").isEqualTo(1);
            wire.mend();
            assertThat(desk.clients().deliverNow())
                    .as("the server is asked at once, and all is there when that returns")
                    .isZero();
            assertThat(depths())
                    .containsExactly("13", "12", "11", start.value(DEPTH).orElseThrow());
        }
        assertThat(other.audit().firstBreak()).isEmpty();
    }

    @Test
    void whatWaitsOutlivesTheProgramAndIsReadByNobody() throws Exception {
        Content start = visit().content().orElseThrow();
        try (Store desk = Store.open(throughWire, passphrase, Engines.CLOCK)) {
            desk.clients().waitWhileAway(folder);
            desk.clients().load(odile);
            wire.cut();
            saveThreeTimes(desk, start.with("/observed/said", "Odile Farrant"));
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.toList()).isNotEmpty().allSatisfy(file -> assertThat(
                            Files.readString(file, StandardCharsets.ISO_8859_1))
                    .isNotBlank()
                    .doesNotContain("Farrant", "squat-depth", odile.toString()));
        }
        wire.mend();
        try (Store desk = Store.open(throughWire, passphrase, Engines.CLOCK)) {
            desk.clients().waitWhileAway(folder);
            untilNoneWaits(desk);
            assertThat(depths()).startsWith("13", "12", "11");
        }
    }

    @Test
    void whenAnotherDeskWasFirstBothAreKept() throws Exception {
        Content start = visit().content().orElseThrow();
        try (Store desk = Store.open(throughWire, passphrase, Engines.CLOCK)) {
            desk.clients().waitWhileAway(folder);
            desk.clients().load(odile);
            wire.cut();
            saveThreeTimes(desk, start);
            other.clients().save(odile, VISIT, 1, start.with(DEPTH, 20), "Joran Vale");
            wire.mend();
            untilNoneWaits(desk);
        }
        assertThat(depths()).startsWith("20");
        assertThat(other.clients().openClashes(odile)).singleElement().satisfies(clash -> assertThat(
                        clash.mine().orElseThrow().value(DEPTH))
                .as("the last word of the desk that was cut off")
                .contains("13"));
    }
}
