package org.drillsheaf.desk.client;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartClash;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.StoreFailure;
import org.jspecify.annotations.Nullable;

/**
 * Keeps one client's draft in the record, part by part and all the time. What another desk changed meanwhile is laid beneath
 * when no field was changed by both; else the clash is told. Asked on the toolkit's thread; writes beside it, one save at a
 * time, always the newest draft.
 */
public final class Saving {
    private static final Duration LOOK_FOR_SERVER = Duration.ofMillis(500);

    private final Store store;
    private final String coach;
    private final Clock clock;
    private final Background background;
    private final Map<PartKey, Long> versions = new HashMap<>();
    private final Map<PartKey, Content> saved = new HashMap<>();
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.READY);
    private final Consumer<List<News>> beneath;
    private final Consumer<OpenClash> clashed;
    private int onTheirWay;
    private volatile ClientDraft latest;
    private volatile int waiting;
    private @Nullable LocalTime awaySince;
    private boolean lookingForServer;
    private boolean closed;

    /**
     * A part that another desk changed.
     *
     * @param before what stood here
     * @param by who changed it there
     * @param decided fields that stand as the coach here decided
     */
    public record News(PartKey part, Content before, Content after, String by, Set<String> decided) {
        public News {
            decided = Set.copyOf(decided);
        }
    }

    /** How the saving stands. */
    public sealed interface State {
        State READY = new Ready();

        /** Nothing was changed yet. */
        record Ready() implements State {}

        /** On its way. */
        record OnItsWay() implements State {}

        /** On the disk. */
        record Saved(LocalTime at) implements State {}

        /**
         * On this machine's disk; the server is away and gets it when it is back.
         *
         * @param since when that was noticed
         * @param changes how many wait on this desk
         */
        record Waits(LocalTime since, int changes) implements State {}

        /** Kept in the record beside another desk's version; the coach decides. */
        record Asks() implements State {}

        /** Not on the disk; the words are for a person. */
        record Failed(String what, String remedy) implements State {}
    }

    /**
     * @param beneath gets parts as another desk left them, to be laid under the draft
     * @param clashed gets two versions of a part in which both changed the same field
     */
    public Saving(
            Store store,
            String coach,
            Clock clock,
            Background background,
            ClientRecord loaded,
            Consumer<List<News>> beneath,
            Consumer<OpenClash> clashed) {
        this.store = store;
        this.coach = coach;
        this.clock = clock;
        this.background = background;
        this.beneath = beneath;
        this.clashed = clashed;
        this.latest = ClientDraft.of(loaded);
        loaded.parts().forEach(this::know);
    }

    private void know(PartKey key, Part part) {
        versions.put(key, part.version());
        part.content().ifPresentOrElse(c -> saved.put(key, c), () -> saved.remove(key));
    }

    public ReadOnlyObjectProperty<State> state() {
        return state.getReadOnlyProperty();
    }

    /** Saves whatever differs. */
    public void save(ClientDraft draft) {
        latest = draft;
        state.set(new State.OnItsWay());
        onTheirWay++;
        background.run(
                this::write,
                clash -> {
                    onTheirWay--;
                    written(clash);
                },
                e -> {
                    onTheirWay--;
                    failed(e);
                });
    }

    /**
     * Saves whatever is not on the disk yet and waits for it; nothing is saved or looked for afterwards.
     *
     * @throws StoreFailure when it cannot be saved
     */
    void close() {
        closed = true;
        write();
    }

    /** The client was erased: what stands here is for nobody any more. */
    void giveUp() {
        closed = true;
    }

    private synchronized Optional<PartClash> write() {
        ClientDraft draft = latest;
        TreeSet<PartKey> keys = new TreeSet<>(draft.parts().keySet());
        keys.addAll(saved.keySet());
        boolean any = false;
        for (PartKey key : keys) {
            Optional<Content> content = Optional.ofNullable(draft.parts().get(key));
            if (content.equals(Optional.ofNullable(saved.get(key)))) {
                continue;
            }
            long from = versions.getOrDefault(key, 0L);
            SaveResult result = content.isPresent()
                    ? store.clients().save(draft.key(), key, from, content.get(), coach)
                    : store.clients().remove(draft.key(), key, from, coach);
            if (result instanceof SaveResult.Clashed clash) {
                return Optional.of(clash.clash());
            }
            SaveResult.Saved done = (SaveResult.Saved) result;
            waiting = done.waits() ? Math.max(1, store.clients().waiting()) : 0;
            versions.put(key, done.version());
            content.ifPresentOrElse(c -> saved.put(key, c), () -> saved.remove(key));
            any = true;
        }
        if (any && waiting == 0) {
            store.search().refresh(draft.key());
        }
        return Optional.empty();
    }

    private void written(Optional<PartClash> clash) {
        if (clash.isPresent()) {
            settle(OpenClash.live(clash.get()));
        } else if (onTheirWay == 0) {
            // With another save on its way the newest value is perhaps not on the disk yet.
            if (waiting == 0) {
                arrived();
            } else {
                waitsStill(waiting);
            }
        }
    }

    private void arrived() {
        awaySince = null;
        state.set(new State.Saved(LocalTime.now(clock)));
    }

    private void waitsStill(int changes) {
        awaySince = awaySince == null ? LocalTime.now(clock) : awaySince;
        state.set(new State.Waits(awaySince, changes));
        if (!lookingForServer) {
            lookingForServer = true;
            background.later(LOOK_FOR_SERVER, this::lookForServer);
        }
    }

    /** What waits goes to the server by itself; the coach is told when it is there, and asked where another desk was first. */
    private void lookForServer() {
        if (closed || !(state.get() instanceof State.Waits)) {
            lookingForServer = false;
            return;
        }
        background.run(
                () -> store.clients().waiting(),
                left -> {
                    lookingForServer = false;
                    heard(left);
                },
                e -> lookingForServer = false);
    }

    /** Tells how many wait by now; while a save is on its way nobody knows. */
    private void heard(int left) {
        if (!closed && state.get() instanceof State.Waits) {
            if (left > 0) {
                waitsStill(left);
            } else {
                arrived();
                lookForClashes(latest.key());
            }
        }
    }

    /**
     * Asks a server that is away at once.
     *
     * @param answered gets whether all is sent
     */
    void tryServer(Consumer<Boolean> answered) {
        background.run(
                () -> store.clients().deliverNow(),
                left -> {
                    heard(left);
                    answered.accept(left == 0);
                },
                e -> answered.accept(false));
    }

    private void failed(Exception failure) {
        state.set(
                failure instanceof StoreFailure kept
                        ? new State.Failed(kept.problem().what(), kept.problem().remedy())
                        : new State.Failed(String.valueOf(failure.getMessage()), ""));
    }

    /** Both stand where no field was changed by both; else the coach decides. */
    private void settle(OpenClash clash) {
        if (clash.isDecided()) {
            decide(clash);
        } else {
            state.set(new State.Asks());
            clashed.accept(clash);
        }
    }

    /** Writes what was decided about a clash. */
    void decide(OpenClash clash) {
        background.run(() -> settled(clash), this::tellSettled, this::failed);
    }

    private record Settled(Optional<News> news, Optional<PartClash> again) {}

    private synchronized Settled settled(OpenClash clash) {
        PartKey part = clash.clash().part();
        Content decided = clash.decided();
        SaveResult result = store.clients().settle(clash.clash(), decided, coach);
        if (result instanceof SaveResult.Clashed again) {
            return new Settled(Optional.empty(), Optional.of(again.clash()));
        }
        long version = ((SaveResult.Saved) result).version();
        // Every key that was typed while the coach decided has left a clash of its own; one decision is for all.
        for (PartClash other : store.clients().openClashes(clash.clash().client())) {
            if (other.part().equals(part)
                    && store.clients().settle(other, decided, coach) instanceof SaveResult.Saved saved) {
                version = saved.version();
            }
        }
        versions.put(part, version);
        saved.put(part, decided);
        return new Settled(
                Optional.of(new News(
                        part, clash.standing(), decided, clash.clash().theirs().savedBy(), clash.decidedPaths())),
                Optional.empty());
    }

    private void tellSettled(Settled settled) {
        settled.news().ifPresent(news -> {
            state.set(new State.Saved(LocalTime.now(clock)));
            beneath.accept(List.of(news));
        });
        settled.again().ifPresent(again -> settle(OpenClash.live(again)));
    }

    /** Looks for a clash that nobody settled before the client was closed the last time. */
    void lookForClashes(UUID client) {
        background.run(
                () -> store.clients().openClashes(client),
                found -> found.stream().reduce((first, later) -> later).ifPresent(c -> settle(OpenClash.found(c))),
                this::failed);
    }

    /** Looks whether another desk saved something, and lays it beneath what stands here. */
    public void look(UUID client) {
        background.run(
                () -> store.clients().load(client).map(this::takeOver).orElse(List.of()),
                news -> {
                    if (!news.isEmpty()) {
                        beneath.accept(news);
                    }
                },
                this::failed);
    }

    /** A part that waits here for its own save is left to the clash that follows. */
    private synchronized List<News> takeOver(ClientRecord record) {
        List<News> news = new ArrayList<>();
        record.parts().forEach((key, part) -> {
            Content here = saved.getOrDefault(key, Content.emptyMap());
            boolean newer = part.version() > versions.getOrDefault(key, 0L);
            boolean waiting = !here.equals(latest.part(key)) && saved.containsKey(key);
            if (newer && !waiting && part.content().isPresent()) {
                know(key, part);
                news.add(new News(key, here, part.content().get(), part.savedBy(), Set.of()));
            }
        });
        return news;
    }
}
