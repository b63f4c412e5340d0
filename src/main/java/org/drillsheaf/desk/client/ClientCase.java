package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.history.History;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.change.Changes;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.KeptProgram;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * One client on the desk: the draft with its history, the chosen visit, what it means, and its saving. What all sheets of the
 * page share. Belongs to the toolkit's thread.
 */
public final class ClientCase implements AutoCloseable {
    private final Workplace workplace;
    private final Evaluator evaluator;
    private final History<ClientDraft> history;
    private final Saving saving;
    private final Lane reading;
    private final ProgramSearch search;
    private final Signing signing;
    private final Changes.Listening listening;
    private final ReadOnlyObjectWrapper<ClientDraft> draft;
    private final ReadOnlyObjectWrapper<LocalDate> visit;
    private final ReadOnlyObjectWrapper<Optional<Evaluation>> evaluation =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<OpenClash>> clash = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> erasedBy = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final StringProperty news = new SimpleStringProperty("");
    private PartKey part;
    /** What was typed last; who works beside the toolkit's thread looks whether it is still wanted. */
    private volatile ClientDraft newest;

    /** @param date the visit to open; the client must have it */
    public ClientCase(Workplace workplace, Evaluator evaluator, ClientRecord record, LocalDate date) {
        this(workplace, evaluator, record, date, new History<>(ClientDraft.of(record)));
    }

    /** @param before what can be taken back; it counts only if the record stands where it ends */
    ClientCase(
            Workplace workplace,
            Evaluator evaluator,
            ClientRecord record,
            LocalDate date,
            History<ClientDraft> before) {
        this.workplace = workplace;
        this.evaluator = evaluator;
        ClientDraft first = ClientDraft.of(record);
        this.history = before.now().equals(first) ? before : new History<>(first);
        this.draft = new ReadOnlyObjectWrapper<>(first);
        this.newest = first;
        this.visit = new ReadOnlyObjectWrapper<>(date);
        this.part = PartKey.visit(date);
        visit.addListener((of, old, now) -> part = PartKey.visit(now));
        this.reading = new Lane(workplace.background());
        this.search = new ProgramSearch(evaluator, workplace.background(), visit, news::set);
        this.signing = new Signing(workplace, evaluator, first.key(), visit, news::set);
        this.saving = new Saving(
                workplace.store(),
                workplace.coach(),
                workplace.clock(),
                workplace.background(),
                record,
                this::layBeneath,
                c -> clash.set(
                        Optional.of(clash.get().map(old -> old.carriedTo(c)).orElse(c))));
        this.listening = workplace.store().changes().listen(entries -> {
            List<AuditEntry> ours = entries.stream().filter(this::isOurs).toList();
            Optional<String> eraser = ours.stream()
                    .filter(e -> e.deed() == AuditEntry.Deed.ERASED)
                    .map(AuditEntry::who)
                    .findFirst();
            if (eraser.isPresent()) {
                workplace.background().show(() -> erased(eraser.get()));
            } else if (!ours.isEmpty()) {
                workplace.background().show(() -> saving.look(first.key()));
            }
        });
        readAgain();
        signing.look();
        saving.lookForClashes(first.key());
    }

    private void erased(String who) {
        saving.giveUp();
        erasedBy.set(Optional.of(who));
    }

    /** Who erased this client at another desk; from then on there is nothing to show or to save. */
    public ReadOnlyObjectProperty<Optional<String>> erasedBy() {
        return erasedBy.getReadOnlyProperty();
    }

    private boolean isOurs(AuditEntry entry) {
        return entry.kind() == AuditEntry.Kind.CLIENT
                && entry.record().equals(history.now().key().toString());
    }

    public Workplace workplace() {
        return workplace;
    }

    public Evaluator evaluator() {
        return evaluator;
    }

    public UUID key() {
        return draft.get().key();
    }

    public ReadOnlyObjectProperty<ClientDraft> draft() {
        return draft.getReadOnlyProperty();
    }

    /** The day of the chosen visit. */
    public ReadOnlyObjectProperty<LocalDate> visit() {
        return visit.getReadOnlyProperty();
    }

    /** What the chosen visit means; empty until it was read the first time. */
    public ReadOnlyObjectProperty<Optional<Evaluation>> evaluation() {
        return evaluation.getReadOnlyProperty();
    }

    /** The last program built for the chosen visit; it may be older than the evaluation while the builder works. */
    public ReadOnlyObjectProperty<Optional<Evaluation.Built>> built() {
        return search.built();
    }

    /** The newest version of the program in the record. */
    public ReadOnlyObjectProperty<Optional<KeptProgram>> kept() {
        return signing.kept();
    }

    public ReadOnlyObjectProperty<Saving.State> saved() {
        return saving.state();
    }

    /**
     * Asks the server of the house at once, which was away.
     *
     * @param answered gets whether all is sent
     */
    void tryServer(Consumer<Boolean> answered) {
        saving.tryServer(answered);
    }

    /** Two desks changed the same field; waits for the coach. */
    public ReadOnlyObjectProperty<Optional<OpenClash>> clash() {
        return clash.getReadOnlyProperty();
    }

    /** What another desk has just changed, in words for the status line. */
    public StringProperty news() {
        return news;
    }

    /** The chosen visit as written. */
    public Content content() {
        return draft.get().part(part);
    }

    /** Whether the program stands for what is typed now; not yet while a change is still being read. */
    public boolean isBuiltForNow() {
        Optional<Evaluation.Built> built = search.built().get();
        return built.isPresent()
                && evaluation.get().isPresent()
                && built.get().of() == evaluation.get().get()
                && evaluation.get().get().draft().equals(draft.get());
    }

    /** Changes the chosen visit. */
    public void edit(String name, String group, UnaryOperator<Content> change) {
        PartKey key = part;
        change(name, group, d -> d.with(key, change.apply(d.part(key))));
    }

    /**
     * Changes the draft; it is read and saved at once.
     *
     * @param name what is done, for the button that takes it back
     * @param group see {@link History#put}
     */
    public void change(String name, String group, UnaryOperator<ClientDraft> change) {
        history.put(name, group, change.apply(history.now()));
        follow();
    }

    History<ClientDraft> history() {
        return history;
    }

    /** Ends a group of steps. */
    public void endGroup() {
        history.endGroup();
    }

    public Optional<String> undoName() {
        return history.undoName();
    }

    public Optional<String> redoName() {
        return history.redoName();
    }

    public void undo() {
        if (history.undo()) {
            follow();
        }
    }

    public void redo() {
        if (history.redo()) {
            follow();
        }
    }

    private void follow() {
        ClientDraft now = history.now();
        if (now.equals(draft.get())) {
            return;
        }
        if (!now.visits().contains(visit.get())) {
            List<LocalDate> left = now.visits();
            if (!left.isEmpty()) {
                visit.set(left.get(left.size() - 1));
            }
        }
        draft.set(now);
        saving.save(now);
        readAgain();
    }

    /** Opens another visit of the client. */
    public void choose(LocalDate date) {
        if (!date.equals(visit.get()) && draft.get().visits().contains(date)) {
            // The day comes last: until then nothing may be taken for what belongs to it.
            evaluation.set(Optional.empty());
            search.forget();
            signing.forget();
            visit.set(date);
            readAgain();
            signing.look();
        }
    }

    private void readAgain() {
        ClientDraft now = draft.get();
        LocalDate date = visit.get();
        newest = now;
        reading.run(
                () -> {
                    Evaluation read = evaluator.read(now, date);
                    return new Read(read, now.equals(newest) ? evaluator.buildIfKnown(read) : Optional.empty());
                },
                result -> {
                    if (!result.evaluation.date().equals(visit.get()) || isOvertaken(result.evaluation)) {
                        return;
                    }
                    evaluation.set(Optional.of(result.evaluation));
                    if (result.built.isPresent()) {
                        search.take(result.built.get());
                    } else if (result.evaluation.draft().equals(draft.get())) {
                        buildNow(); // a search that is overtaken ends itself
                    }
                },
                e -> news.set(String.valueOf(e.getMessage())));
    }

    /** What was typed meanwhile was taken back, and what stands on the desk is right for it already. */
    private boolean isOvertaken(Evaluation late) {
        ClientDraft now = draft.get();
        return !late.draft().equals(now)
                && evaluation.get().filter(shown -> shown.draft().equals(now)).isPresent();
    }

    /** A reading, with its program if that is known without a search: both are shown in one frame. */
    private record Read(Evaluation evaluation, Optional<Evaluation.Built> built) {}

    /** Builds the program for what is typed, unless that is done or under way already. */
    public void buildNow() {
        evaluation.get().filter(Evaluation::mayBuild).ifPresent(now -> {
            if (!isBuiltForNow() && !search.isFor(now)) {
                search.build(now);
            }
        });
    }

    /** Ends a search that takes long; the best program found so far comes, and says that it is not proved. */
    public void stopSearch() {
        search.stop();
    }

    /** Searches again after a stop. */
    public void searchAgain() {
        evaluation.get().filter(Evaluation::mayBuild).ifPresent(search::build);
    }

    /** A program is being searched for, and the coach would wonder. */
    public ReadOnlyBooleanProperty searchIsLong() {
        return search.isLong();
    }

    /** Keeps the program as it stands and signs it with the coach's name. */
    public void sign() {
        signing.sign(search.built().get().flatMap(Evaluation.Built::program).orElseThrow());
    }

    /** The signed version of the program, when it is the very one on the desk. */
    public Optional<KeptProgram> signed() {
        return signing.signed(search.built().get());
    }

    /** Decides one field of a clash; after the last one it is settled. */
    public void decide(OpenClash.Field field, boolean mine) {
        OpenClash left = clash.get().orElseThrow().decide(field, mine);
        clash.set(left.isDecided() ? Optional.empty() : Optional.of(left));
        if (left.isDecided()) {
            saving.decide(left);
        }
    }

    private void layBeneath(List<Saving.News> parts) {
        history.underlay(d -> {
            ClientDraft changed = d;
            for (Saving.News news : parts) {
                changed = changed.with(news.part(), Merge.of(news.before(), changed.part(news.part()), news.after()));
            }
            return changed;
        });
        if (!history.now().equals(draft.get())) {
            draft.set(history.now());
            saving.save(history.now());
            news.set(new FieldWords(workplace.words(), evaluator.knowledge()).news(parts, visit.get()));
            readAgain();
        }
    }

    @Override
    public void close() {
        listening.close();
        stopSearch();
        if (erasedBy.get().isPresent()) {
            return;
        }
        try {
            saving.close();
        } catch (StoreFailure e) {
            news.set(e.problem().what());
        }
    }
}
