package org.drillsheaf.store.record;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.Audit.Note;
import org.drillsheaf.store.change.AuditEntry.Deed;
import org.drillsheaf.store.change.AuditEntry.Kind;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.StoreFailure;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Clients in parts. Every save names the version it started from. Safe for several threads. */
public final class Clients {
    private final Database database;
    private final Audit audit;
    private final Clock clock;
    private final Set<UUID> open = ConcurrentHashMap.newKeySet();
    private volatile @Nullable WaitingSaves waiting;

    public Clients(Database database, Audit audit, Clock clock) {
        this.database = database;
        this.audit = audit;
        this.clock = clock;
    }

    /** All clients by name. */
    public List<ClientSummary> list() {
        return database.read(handle -> handle.createQuery("SELECT * FROM client ORDER BY full_name, client_id")
                .map(ClientRows.SUMMARY)
                .list());
    }

    /** Hands over every client in no order. A list of 100 000 would be sorted on the disk first, which takes many times as long. */
    public void each(Consumer<ClientSummary> consumer) {
        database.snapshot(handle -> {
            handle.createQuery("SELECT * FROM client")
                    .setFetchSize(1_000)
                    .map(ClientRows.SUMMARY)
                    .forEach(consumer);
            return true;
        });
    }

    public Optional<ClientSummary> summary(UUID key) {
        return database.read(handle -> handle.createQuery("SELECT * FROM client WHERE client_key = :key")
                .bind("key", key)
                .map(ClientRows.SUMMARY)
                .findOne());
    }

    /** The lines of these clients, in this order; one that is gone is left out. */
    public List<ClientSummary> summaries(List<UUID> keys) {
        if (keys.isEmpty()) {
            return List.of();
        }
        Map<UUID, ClientSummary> found = new HashMap<>();
        database.read(handle -> handle.createQuery("SELECT * FROM client WHERE client_key IN (<keys>)")
                        .bindList("keys", keys)
                        .map(ClientRows.SUMMARY)
                        .list())
                .forEach(summary -> found.put(summary.key(), summary));
        return keys.stream().filter(found::containsKey).map(found::get).toList();
    }

    /** The key of the client with this id. */
    public Optional<UUID> key(String id) {
        return database.read(handle -> handle.createQuery("SELECT client_key FROM client WHERE client_id = :id")
                .bind("id", id)
                .mapTo(UUID.class)
                .findOne());
    }

    /** Everything that is kept about the client now. */
    public Optional<ClientRecord> load(UUID key) {
        Optional<ClientRecord> found = database.read(handle -> ClientRows.load(handle, key));
        found.ifPresent(client -> open.add(client.key()));
        return found;
    }

    /**
     * Adds a client.
     *
     * @param who name of the coach
     * @return the new client's key
     */
    public UUID add(ClientText text, String who) {
        UUID key = UUID.randomUUID();
        return database.write(handle -> {
            if (handle.createQuery("SELECT COUNT(*) FROM client WHERE client_id = :id")
                            .bind("id", text.id())
                            .mapTo(Integer.class)
                            .one()
                    > 0) {
                throw new StoreFailure(
                        StoreFailure.Kind.REFUSED,
                        text.id(),
                        "There is already a client with this id",
                        "Open that client, or choose another id");
            }
            ClientRows.insertClient(handle, key, text.id());
            List<Note> notes = new ArrayList<>();
            Instant now = now();
            new TreeMap<>(text.parts()).forEach((part, content) -> {
                ClientRows.insertPart(handle, key, new Part(part, 1, Optional.of(content), who, now));
                notes.add(note(who, Deed.ADDED, key, part, 1, changed(Optional.empty(), Optional.of(content))));
            });
            ClientRows.refreshSummary(handle, key);
            audit.note(handle, notes);
            return key;
        });
    }

    /**
     * Saves one part.
     *
     * @param baseVersion the version that was loaded; 0 for a new visit
     * @param who name of the coach
     */
    public SaveResult save(UUID client, PartKey part, long baseVersion, Content content, String who) {
        return putOrWait(new PartSave(client, part, baseVersion, Optional.of(content), who, now()));
    }

    /** Removes a visit; its versions stay. */
    public SaveResult remove(UUID client, PartKey visit, long baseVersion, String who) {
        if (visit.date().isEmpty()) {
            throw new IllegalArgumentException("only visits can be removed");
        }
        return putOrWait(new PartSave(client, visit, baseVersion, Optional.empty(), who, now()));
    }

    /**
     * From now on, saves of clients that were loaded here wait while the server is away; those that a process before has left
     * go to the server first.
     *
     * @param folder of this machine's user; what waits there is enciphered under a key that only the server holds
     * @throws IOException when nothing can be written there
     */
    public void waitWhileAway(Path folder) throws IOException {
        UUID storeKey = database.read(handle -> handle.createQuery("SELECT store_key FROM ledger")
                .mapTo(UUID.class)
                .one());
        waiting = new WaitingSaves(folder, storeKey, this::put, this::isOvertaken, audit::newest);
    }

    /** How many saves wait for the server. */
    public int waiting() {
        WaitingSaves saves = waiting;
        return saves == null ? 0 : saves.count();
    }

    /**
     * Asks the server now instead of at the next half second, and sends what waits if it answers. A server that is away is
     * waited for as long as anywhere else.
     *
     * @return how many saves wait afterwards
     */
    public int deliverNow() {
        WaitingSaves saves = waiting;
        if (saves != null) {
            saves.deliverIfBack();
        }
        return waiting();
    }

    /** Lets go of what waits; it stays on this machine's disk. */
    public void close() {
        WaitingSaves saves = waiting;
        if (saves != null) {
            saves.close();
        }
    }

    private SaveResult putOrWait(PartSave save) {
        WaitingSaves saves = waiting;
        return saves == null || !open.contains(save.client()) ? put(save) : saves.save(save);
    }

    /** Whether another desk was first; a save whose answer never arrived is not another desk's. */
    private boolean isOvertaken(PartSave save) {
        return database.read(handle -> ClientRows.part(handle, save.client(), save.part())
                                .map(Part::version)
                                .orElse(0L)
                        > save.base()
                && !ClientRows.isThere(handle, save));
    }

    private SaveResult put(PartSave save) {
        UUID client = save.client();
        PartKey key = save.part();
        long baseVersion = save.base();
        Optional<Content> content = save.content();
        String who = save.who();
        Part part = new Part(key, baseVersion + 1, content, who, save.at());
        return database.write(handle -> {
            Optional<Part> before = ClientRows.part(handle, client, key);
            long there = before.map(Part::version).orElse(0L);
            if (there == baseVersion
                    && before.isPresent()
                    && before.get().content().equals(content)) {
                return new SaveResult.Saved(baseVersion);
            }
            boolean written = there == baseVersion
                    && (baseVersion == 0
                            ? ClientRows.insertPart(handle, client, part)
                            : ClientRows.updatePart(handle, client, part));
            if (!written) {
                return ClientRows.isThere(handle, save)
                        ? new SaveResult.Saved(baseVersion + 1)
                        : clashed(handle, client, part, baseVersion);
            }
            Optional<Content> old = before.flatMap(Part::content);
            Deed deed = content.isEmpty() ? Deed.REMOVED : old.isEmpty() ? Deed.ADDED : Deed.CHANGED;
            if (key.equals(PartKey.CLIENT) || deed != Deed.CHANGED) { // the only saves that show in the list of clients
                ClientRows.refreshSummary(handle, client);
            }
            audit.note(handle, List.of(note(who, deed, client, key, baseVersion + 1, changed(old, content))));
            return new SaveResult.Saved(baseVersion + 1);
        });
    }

    private SaveResult clashed(Handle handle, UUID client, Part mine, long baseVersion) {
        PartClash clash = Clashes.keep(handle, client, mine, baseVersion);
        List<String> fields = clash.fields().stream().map(PartClash.Field::path).toList();
        audit.note(
                handle,
                List.of(note(
                        mine.savedBy(),
                        Deed.CLASHED,
                        client,
                        mine.key(),
                        clash.theirs().version(),
                        fields)));
        return new SaveResult.Clashed(clash);
    }

    /** Clashes of a client that nobody has settled yet, oldest first. */
    public List<PartClash> openClashes(UUID client) {
        return database.read(handle -> Clashes.open(handle, client));
    }

    /**
     * Settles a clash: what came second becomes a version after all, and what was decided the newest one.
     *
     * @param decided built from both; may equal either
     * @return clashed again when the part was saved once more in between
     */
    public SaveResult settle(PartClash clash, Content decided, String who) {
        UUID client = clash.client();
        PartKey key = clash.part();
        long theirs = clash.theirs().version();
        boolean isMine = clash.mine().equals(Optional.of(decided));
        Part second = new Part(key, theirs + 1, clash.mine(), clash.mineBy(), clash.mineAt());
        Part last = new Part(key, isMine ? theirs + 1 : theirs + 2, Optional.of(decided), who, now());
        return database.write(handle -> {
            boolean written = (isMine || ClientRows.updatePart(handle, client, second))
                    && ClientRows.updatePart(handle, client, last);
            if (!written) {
                return clashed(handle, client, last, theirs);
            }
            if (key.equals(PartKey.CLIENT)) {
                ClientRows.refreshSummary(handle, client);
            }
            Clashes.remove(handle, clash);
            List<String> fields = changed(clash.theirs().content(), Optional.of(decided));
            audit.note(
                    handle,
                    List.of(
                            note(who, Deed.CHANGED, client, key, last.version(), fields),
                            note(who, Deed.SETTLED, client, key, last.version(), List.of())));
            return new SaveResult.Saved(last.version());
        });
    }

    /** Every version of a part, newest first; removed ones too. */
    public List<Part> versions(UUID client, PartKey part) {
        return database.read(handle -> handle.createQuery(
                        "SELECT * FROM client_part_version WHERE client_key = :client AND part = :part"
                                + " ORDER BY part_version DESC")
                .bind("client", client)
                .bind("part", part.text())
                .map(ClientRows.PART)
                .list());
    }

    /** Whether what a part says can be read back; for checking the whole record. */
    public static boolean isReadable(String body) {
        try {
            Content.parse(body);
            return true;
        } catch (StoreFailure e) {
            return false;
        }
    }

    private static Note note(String who, Deed deed, UUID client, PartKey part, long version, List<String> fields) {
        return new Note(
                who, deed, Kind.CLIENT, client.toString(), part.text(), version, ClientRows.names(part, fields));
    }

    /** Paths of the fields that differ. */
    private static List<String> changed(Optional<Content> before, Optional<Content> after) {
        Map<String, String> old =
                before.<Map<String, String>>map(Content::fields).orElseGet(HashMap::new);
        Map<String, String> now =
                after.<Map<String, String>>map(Content::fields).orElseGet(HashMap::new);
        TreeSet<String> paths = new TreeSet<>(old.keySet());
        paths.addAll(now.keySet());
        paths.removeIf(path -> java.util.Objects.equals(old.get(path), now.get(path)));
        return List.copyOf(paths);
    }

    private Instant now() {
        return clock.instant().atOffset(ZoneOffset.UTC).toInstant().truncatedTo(ChronoUnit.MILLIS);
    }
}
