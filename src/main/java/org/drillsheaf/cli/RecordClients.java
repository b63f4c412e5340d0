package org.drillsheaf.cli;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientSummary;

/** Finds the one client of the record that somebody means. */
final class RecordClients {
    private static final int MOST_NAMED = 10;

    private RecordClients() {}

    /** By id, else by the beginnings of the words of a name, when only one is called so. */
    static UUID one(Store store, String text) {
        Optional<UUID> byId = store.clients().key(text);
        if (byId.isPresent()) {
            return byId.get();
        }
        List<ClientSummary> found = text.isBlank() ? List.of() : store.search().clients(text, MOST_NAMED + 1);
        if (found.isEmpty()) {
            throw BadInput.because(
                    text,
                    "No client of the record is called so",
                    "Check the name, or take the file in with “store add”");
        }
        if (found.size() > 1) {
            String ids = found.stream().limit(MOST_NAMED).map(ClientSummary::id).collect(Collectors.joining(", "));
            throw BadInput.because(
                    text,
                    "Several clients are called so: " + ids + (found.size() > MOST_NAMED ? ", …" : ""),
                    "Name one by the id");
        }
        return found.get(0).key();
    }

    /** By id only; for what cannot be undone. */
    static UUID withId(Store store, String id) {
        return store.clients()
                .key(id)
                .orElseThrow(() -> BadInput.because(id, "No client of the record has this id", "Check the id"));
    }
}
