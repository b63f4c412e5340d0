package org.drillsheaf.store;

import java.nio.file.Path;
import java.util.UUID;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;

/** A desk in a process of its own that saves until something is wrong, and says what: the kind of failure and its words. */
final class FailingDesk {
    private static final int MOST_SAVES = 5_000;

    private FailingDesk() {}

    /** The arguments are the record's file, and {@code save} or {@code grow} for saves that need space. */
    public static void main(String[] arguments) {
        String filler = arguments[1].equals("grow") ? "otters ".repeat(2_000) : "";
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.open(new StoreAddress.File(Path.of(arguments[0])), passphrase, Engines.CLOCK)) {
            UUID client = store.clients().key("odile-farrant").orElseThrow();
            for (int edit = 1; edit < MOST_SAVES; edit++) {
                Part now = SavingDesk.visit(store);
                Content next = now.content().orElseThrow().with("/observed/edit", edit + filler);
                SaveResult result = store.clients().save(client, now.key(), now.version(), next, "Tamsin Rook");
                System.out.println(((SaveResult.Saved) result).version());
            }
        } catch (StoreFailure e) {
            System.out.println(e.kind() + " " + e.problem().message());
        }
    }
}
