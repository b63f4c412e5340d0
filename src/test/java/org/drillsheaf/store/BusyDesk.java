package org.drillsheaf.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.Watcher;

/** A desk in a process of its own that does everything a record can do, goes wrong as well, and then stays open. */
final class BusyDesk {
    private static final String WHO = "Tamsin Rook";
    private static final int CLIENTS = 400;

    private BusyDesk() {}

    /** The argument is the new record's file. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        try (Passphrase passphrase = Engines.passphrase();
                Store store =
                        Store.create(new StoreAddress.File(Path.of(arguments[0])), passphrase, Clock.systemUTC())) {
            UUID odile = add(store, "odile-farrant");
            for (int n = 0; n < CLIENTS; n++) {
                add(store, "odile-farrant-" + n);
            }
            PartKey key = PartKey.visit(LocalDate.of(2026, 3, 5));
            Part visit = store.clients().load(odile).orElseThrow().part(key).orElseThrow();
            for (int n = 0; n < 2; n++) { // the second one clashes
                store.clients()
                        .save(
                                odile,
                                key,
                                visit.version(),
                                visit.content().orElseThrow().with("/observed/n", n),
                                WHO);
            }
            store.documents()
                    .handOut(
                            new HandedOut.Draft(
                                    odile,
                                    Optional.empty(),
                                    "referral-note",
                                    LocalDate.of(2026, 3, 5),
                                    "en",
                                    "A4",
                                    "0.1.0",
                                    Map.of("client.yaml", "Odile Farrant".getBytes(StandardCharsets.UTF_8)),
                                    "%PDF Odile Farrant".getBytes(StandardCharsets.UTF_8)),
                            WHO);
            store.archive().write(odile, new ByteArrayOutputStream(), WHO);
            store.search().clients("odile far", 50);
            store.verify(Watcher.NONE);
            store.backups().make();
            try {
                add(store, "odile-farrant");
            } catch (StoreFailure expected) {
                expected.printStackTrace(); // as a careless log would write it
            }
            store.erase(odile, WHO);
            System.out.println("all done, still open");
            TimeUnit.MINUTES.sleep(1);
        }
    }

    private static UUID add(Store store, String id) {
        String yaml = Engines.sample("odile-farrant").replace("id: odile-farrant", "id: " + id);
        return store.clients().add(Engines.text(yaml), WHO);
    }
}
