package org.drillsheaf.store.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.change.Changes;
import org.drillsheaf.store.record.ClientSummary;
import org.drillsheaf.store.record.Clients;
import org.drillsheaf.store.record.Drills;

/**
 * Finds clients and drills. Loads the names at the first question (or {@link #warmUp}) and follows the changes from then on.
 * Safe for several threads.
 */
public final class Search implements AutoCloseable {
    private final Clients clients;
    private final Drills drills;
    private final Changes changes;
    private final Index<UUID> clientIndex = new Index<>();
    private final Index<String> drillIndex = new Index<>();
    private Changes.@org.jspecify.annotations.Nullable Listening listening;

    public Search(Clients clients, Drills drills, Changes changes) {
        this.clients = clients;
        this.drills = drills;
        this.changes = changes;
    }

    /** Loads the names, once. Call it from a thread that may wait. */
    public synchronized void warmUp() {
        if (listening == null) {
            listening = changes.listen(entries -> entries.forEach(this::follow));
            List<Index.Entry<UUID>> entries = new ArrayList<>();
            clients.each(client -> entries.add(entry(client)));
            clientIndex.fill(entries);
            drillIndex.fill(drills.list().stream().map(Search::entry).toList());
        }
    }

    /**
     * Clients in whose name, id, coach or year of birth every typed word begins a word.
     *
     * @param typed nothing finds everybody
     * @param most number of hits
     */
    public List<ClientSummary> clients(String typed, int most) {
        warmUp();
        return clients.summaries(clientIndex.find(typed, most));
    }

    /** Ids of drills that are called so in any language. */
    public List<String> drills(String typed, int most) {
        warmUp();
        return drillIndex.find(typed, most);
    }

    private void follow(AuditEntry change) {
        if (change.kind() == AuditEntry.Kind.CLIENT) {
            refresh(UUID.fromString(change.record()));
        } else if (change.kind() == AuditEntry.Kind.DRILL) {
            drills.line(change.record()).map(Search::entry).ifPresent(drillIndex::put);
        }
    }

    /** Looks at one client again; for a save at this desk that should be found at once. */
    public void refresh(UUID client) {
        Optional<ClientSummary> now = clients.summary(client);
        now.map(Search::entry).ifPresentOrElse(clientIndex::put, () -> clientIndex.remove(client));
    }

    private static Index.Entry<UUID> entry(ClientSummary client) {
        return new Index.Entry<>(
                client.key(),
                client.name(),
                client.name() + " " + client.id() + " " + client.coach() + " " + client.born());
    }

    private static Index.Entry<String> entry(Drills.Line drill) {
        return new Index.Entry<>(drill.drill(), drill.names(), drill.names());
    }

    @Override
    public synchronized void close() {
        if (listening != null) {
            listening.close();
        }
    }
}
