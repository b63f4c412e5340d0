package org.drillsheaf.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;

/** A desk in a process of its own: saves one visit again and again, and says the version after each save, until it is killed. */
final class SavingDesk {
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));

    private SavingDesk() {}

    static Process start(StoreAddress.File address) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SavingDesk.class.getName(),
                        address.file().toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    static Part visit(Store store) {
        UUID client = store.clients().key("odile-farrant").orElseThrow();
        return store.clients().load(client).orElseThrow().part(VISIT).orElseThrow();
    }

    /** The argument is the record's file. */
    public static void main(String[] arguments) {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.open(new StoreAddress.File(Path.of(arguments[0])), passphrase, Engines.CLOCK)) {
            UUID client = store.clients().key("odile-farrant").orElseThrow();
            for (int edit = 1; ; edit++) {
                Part now = visit(store);
                SaveResult result = store.clients()
                        .save(
                                client,
                                VISIT,
                                now.version(),
                                now.content().orElseThrow().with("/observed/edit", now.version()),
                                "Tamsin Rook");
                System.out.println(((SaveResult.Saved) result).version());
            }
        }
    }
}
