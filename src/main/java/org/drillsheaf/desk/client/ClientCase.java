package org.drillsheaf.desk.client;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
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
import org.drillsheaf.store.record.PartClash;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * One client on the desk: the draft with its history, the chosen visit, what it means, and its saving. What all sheets of the
 * page share. Belongs to the toolkit's thread.
 */
public final class ClientCase implements AutoCloseable {
    /** A program is built when nothing was typed for so long. */
    private static final Duration PAUSE = Duration.ofMillis(120);

    private final Workplace workplace;
    private final Evaluator evaluator;
    private final History<ClientDraft> history;
    private final Saving saving;
    private final Lane reading;
    private final Lane building;
    private final Lane signing;
    private final Changes.Listening listening;
    private final ReadOnlyObjectWrapper<ClientDraft> draft;
    private final ReadOnlyObjectWrapper<LocalDate> visit;
    private final ReadOnlyObjectWrapper<Optional<Evaluation>> evaluation =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Evaluation.Built>> built =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<KeptProgram>> kept = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<PartClash>> clash = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final StringProperty news = new SimpleStringProperty("");
    private long typed;

    /** @param date the visit to open; the client must have it */
    public ClientCase(Workplace workplace, Evaluator evaluator, ClientRecord record, LocalDate date) {
        this.workplace = workplace;
        this.evaluator = evaluator;
        ClientDraft first = ClientDraft.of(record);
        this.history = new History<>(first);
        this.draft = new ReadOnlyObjectWrapper<>(first);
        this.visit = new ReadOnlyObjectWrapper<>(date);
        this.reading = new Lane(workplace.background());
        this.building = new Lane(workplace.background());
        this.signing = new Lane(workplace.background());
        this.saving = new Saving(
                workplace.store(),
                workplace.coach(),
                workplace.clock(),
                workplace.background(),
                record,
                this::layBeneath,
                c -> clash.set(Optional.of(c)));
        this.listening = workplace.store().changes().listen(entries -> {
            if (entries.stream().anyMatch(this::isOurs)) {
                workplace.background().show(() -> saving.look(first.key()));
            }
        });
        readAgain();
        lookForKept();
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
        return built.getReadOnlyProperty();
    }

    /** The newest version of the program in the record. */
    public ReadOnlyObjectProperty<Optional<KeptProgram>> kept() {
        return kept.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Saving.State> saved() {
        return saving.state();
    }

    /** Two desks changed one field; waits for the coach. */
    public ReadOnlyObjectProperty<Optional<PartClash>> clash() {
        return clash.getReadOnlyProperty();
    }

    /** What another desk has just changed, in words for the status line. */
    public StringProperty news() {
        return news;
    }

    /** The chosen visit as written. */
    public Content content() {
        return draft.get().visit(visit.get());
    }

    /** Whether the program stands for what is typed now. */
    public boolean isBuiltForNow() {
        return built.get().isPresent()
                && evaluation.get().isPresent()
                && built.get().get().of() == evaluation.get().get();
    }

    /** Changes the chosen visit. */
    public void edit(String name, String group, UnaryOperator<Content> change) {
        PartKey key = PartKey.visit(visit.get());
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
            visit.set(date);
            evaluation.set(Optional.empty());
            built.set(Optional.empty());
            kept.set(Optional.empty());
            readAgain();
            lookForKept();
        }
    }

    private void readAgain() {
        ClientDraft now = draft.get();
        LocalDate date = visit.get();
        long turn = ++typed;
        reading.run(
                () -> evaluator.read(now, date),
                result -> {
                    if (!result.date().equals(visit.get())) {
                        return;
                    }
                    evaluation.set(Optional.of(result));
                    workplace.background().later(PAUSE, () -> {
                        if (turn == typed) {
                            buildNow();
                        }
                    });
                },
                e -> news.set(String.valueOf(e.getMessage())));
    }

    /** Builds the program for what is typed, unless that is done already. */
    public void buildNow() {
        Optional<Evaluation> now = evaluation.get().filter(Evaluation::mayBuild);
        if (now.isEmpty() || isBuiltForNow()) {
            return;
        }
        building.run(
                () -> evaluator.build(now.get()),
                result -> {
                    boolean known =
                            built.get().filter(b -> b.of() == result.of()).isPresent();
                    if (!known && result.of().date().equals(visit.get())) {
                        built.set(Optional.of(result));
                    }
                },
                e -> news.set(String.valueOf(e.getMessage())));
    }

    private void lookForKept() {
        UUID client = key();
        LocalDate date = visit.get();
        signing.run(
                () -> workplace.store().programs().newest(client, date),
                found -> {
                    if (date.equals(visit.get())) {
                        kept.set(found);
                    }
                },
                e -> news.set(String.valueOf(e.getMessage())));
    }

    /** Keeps the program as it stands and signs it with the coach's name. */
    public void sign() {
        Evaluation.Built now = built.get().orElseThrow();
        signing.run(
                () -> {
                    KeptProgram saved = workplace
                            .store()
                            .programs()
                            .save(
                                    key(),
                                    now.program().orElseThrow(),
                                    evaluator.knowledge().catalogue(),
                                    workplace.coach());
                    return workplace.store().programs().sign(saved.key(), workplace.coach());
                },
                signed -> kept.set(Optional.of(signed)),
                e -> news.set(String.valueOf(e.getMessage())));
    }

    /** The signed version of the program, when it is the very one on the desk. */
    public Optional<KeptProgram> signed() {
        return kept.get().filter(k -> k.signedBy().isPresent()).filter(k -> built.get()
                .flatMap(Evaluation.Built::program)
                .map(org.drillsheaf.program.ProgramYaml::write)
                .filter(k.yaml()::equals)
                .isPresent());
    }

    /** Settles a clash with one of the two versions, whole. */
    public void settle(boolean mine) {
        PartClash waiting = clash.get().orElseThrow();
        clash.set(Optional.empty());
        Optional<Content> decided = mine ? waiting.mine() : waiting.theirs().content();
        decided.ifPresent(content -> saving.decide(waiting, content));
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
            news.set(workplace.words().text("news.other-desk"));
            readAgain();
        }
    }

    @Override
    public void close() {
        listening.close();
        try {
            saving.flush();
        } catch (StoreFailure e) {
            news.set(e.problem().what());
        }
    }
}
