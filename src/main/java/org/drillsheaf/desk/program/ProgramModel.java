package org.drillsheaf.desk.program;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.AssignedDose;
import org.drillsheaf.program.Barrier;
import org.drillsheaf.program.BuildResult;
import org.drillsheaf.program.ClashSet;
import org.drillsheaf.program.CoachWishes;
import org.drillsheaf.program.Cost;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.InPersonOnly;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Offer;
import org.drillsheaf.program.PhaseRow;
import org.drillsheaf.program.Pin;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Undecided;
import org.drillsheaf.program.Waits;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;
import org.jspecify.annotations.Nullable;

/** What the sheet with the program shows and does. Knows no toolkit. */
public final class ProgramModel {
    private static final int MOST_MINUTES = 120;
    private static final int MORE_MINUTES = 5;

    private final ClientCase client;
    private @Nullable Shown last;
    private Optional<Cost> cost = Optional.empty();

    /** The last program there was, with the time it was built. */
    public record Shown(Evaluation.Built built, Program program, LocalTime at) {}

    public ProgramModel(ClientCase client) {
        this.client = client;
        client.built().addListener((of, before, now) -> now.ifPresent(this::arrived));
        client.visit().addListener((of, before, now) -> {
            last = null;
            cost = Optional.empty();
        });
        client.built().get().ifPresent(this::arrived);
    }

    private void arrived(Evaluation.Built built) {
        built.program().ifPresent(program -> {
            if (last != null && !last.program().equals(program)) {
                cost = Optional.of(
                        program.proof().value().minus(last.program().proof().value()));
            }
            last = new Shown(built, program, LocalTime.now(client.workplace().clock()));
        });
    }

    public ClientCase client() {
        return client;
    }

    /** The trade's words in the language of the window. */
    TradeWords trade() {
        return new TradeWords(client.workplace().words(), knowledge().vocabulary());
    }

    private Knowledge knowledge() {
        return client.evaluator().knowledge();
    }

    /** The last program there was; it stays in sight while another one is looked for or nothing fits. */
    public Optional<Shown> shown() {
        return Optional.ofNullable(last);
    }

    /** What the last change made worse or better, in words; empty when nothing was built before. */
    public Optional<String> costOfLastChange() {
        return cost.map(c -> trade().say(c.words()));
    }

    private Optional<BuildResult> result() {
        return client.built().get().map(b -> b.planning().result());
    }

    /** What cannot hold together. */
    public Optional<ClashSet> clash() {
        return result().filter(ClashSet.class::isInstance).map(ClashSet.class::cast);
    }

    /** How much better a program could be than the one on the desk, when its search was stopped. */
    public Optional<String> notProved() {
        return client.isBuiltForNow()
                ? client.built()
                        .get()
                        .flatMap(Evaluation.Built::program)
                        .map(Program::proof)
                        .filter(p -> p.stopped() && !p.best())
                        .map(p -> trade().say(p.gap()))
                : Optional.empty();
    }

    /** Whether the search was stopped before it had found any program. */
    public boolean isStoppedWithout() {
        return client.isBuiltForNow()
                && result().filter(r -> r instanceof Undecided u && u.stopped()).isPresent();
    }

    /** Why there is no program for home, or why it has to wait. */
    public List<String> refusal() {
        List<Saying> reasons = result().map(r -> r instanceof Waits waits
                        ? waits.reasons()
                        : r instanceof InPersonOnly only
                                ? only.reasons()
                                : r instanceof Undecided undecided ? List.of(undecided.words()) : List.<Saying>of())
                .orElse(List.of());
        return reasons.stream().map(trade()::sentence).toList();
    }

    /** Whether the program in sight is the one for what stands on the desk now. */
    public boolean isCurrent() {
        return client.isBuiltForNow()
                && client.built().get().flatMap(Evaluation.Built::program).isPresent();
    }

    /** Whether safety answers and re-screen let one be built at all. */
    public boolean mayBuild() {
        return client.evaluation().get().filter(Evaluation::mayBuild).isPresent();
    }

    /** Why no program may be built: what a safety answer does to it, else that the answers come first. */
    public String whyNotBuilt(String otherwise) {
        return client.workplace()
                .words()
                .text(client.evaluation()
                        .get()
                        .flatMap(Evaluation::barredBySafety)
                        .orElse(otherwise));
    }

    /** What the house calls a phase, in the language of the window. */
    public String name(Phase phase) {
        return trade().phase(phase);
    }

    public PhaseRow row(Phase phase) {
        return knowledge().vocabulary().phases().row(phase);
    }

    /** The gate after a phase. */
    public Optional<GateResult> gate(Phase phase) {
        return client.evaluation()
                .get()
                .flatMap(Evaluation::visit)
                .map((ClientVisit v) -> v.gates(knowledge()))
                .filter(gates -> phase.ordinal() < gates.size())
                .map(gates -> gates.get(phase.ordinal()));
    }

    public Optional<Drill> drill(String id) {
        return knowledge().catalogue().drill(id);
    }

    /** Name of a drill for the coach. */
    public String name(String id) {
        return trade().say(Saying.name(Saying.Name.Kind.DRILL, id));
    }

    public String goal(String id) {
        return trade().say(Saying.name(Saying.Name.Kind.GOAL, id));
    }

    public void pin(Phase phase, Entry entry, String name) {
        boolean pinned = entry.pinned().isPresent();
        client.edit(
                name,
                "",
                visit -> pinned
                        ? WishesEdit.unpin(visit, entry.drill(), Optional.of(phase))
                        : WishesEdit.pin(visit, Pin.Kind.MUST_HAVE, entry.drill(), phase));
    }

    public void leaveOut(Phase phase, Entry entry, String name) {
        client.edit(
                name,
                "",
                visit -> WishesEdit.pin(
                        WishesEdit.unpin(visit, entry.drill(), Optional.of(phase)),
                        Pin.Kind.MUST_NOT_HAVE,
                        entry.drill(),
                        phase));
    }

    public void swap(Phase phase, Entry entry, String instead, String name) {
        client.edit(name, "", visit -> WishesEdit.swap(visit, phase, entry.drill(), instead));
    }

    /** Sets or counts or effort of an entry by one more or less. */
    public void dose(Phase phase, Entry entry, int sets, int each, int effort, String name) {
        AssignedDose now = entry.dose();
        Optional<CoachWishes.DoseWish> wish = wish(phase, entry.drill());
        OptionalInt wantedSets = changed(sets, now.sets(), wish.map(CoachWishes.DoseWish::sets));
        OptionalInt wantedEach = changed(each, now.each(), wish.map(CoachWishes.DoseWish::each));
        OptionalInt wantedEffort = changed(effort, now.effort(), wish.map(CoachWishes.DoseWish::effort));
        client.edit(
                name, "", visit -> WishesEdit.dose(visit, entry.drill(), phase, wantedSets, wantedEach, wantedEffort));
    }

    private static OptionalInt changed(int by, int now, Optional<OptionalInt> wished) {
        return by == 0 ? wished.orElse(OptionalInt.empty()) : OptionalInt.of(Math.max(0, now + by));
    }

    /** What the coach wants the dose of a drill in a phase to be. */
    public Optional<CoachWishes.DoseWish> wish(Phase phase, String drill) {
        return client.evaluation().get().flatMap(Evaluation::visit).flatMap(v -> v.wishes().doses().stream()
                .filter(d -> d.drill().equals(drill)
                        && d.phase().filter(phase::equals).isPresent())
                .findFirst());
    }

    public void usualDose(Phase phase, Entry entry, String name) {
        client.edit(
                name,
                "",
                visit -> WishesEdit.dose(
                        visit, entry.drill(), phase, OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty()));
    }

    /** Puts an entry at another place of its phase. */
    public void move(Phase phase, String drill, int to, String name) {
        shown().ifPresent(s -> {
            List<String> drills = new ArrayList<>(s.program().phase(phase).entries().stream()
                    .map(Entry::drill)
                    .toList());
            int from = drills.indexOf(drill);
            int place = Math.max(0, Math.min(drills.size() - 1, to));
            if (from >= 0 && from != place) {
                drills.add(place, drills.remove(from));
                List<String> wanted = Collections.unmodifiableList(drills);
                client.edit(name, "", visit -> WishesEdit.order(visit, phase, wanted));
            }
        });
    }

    /** Lets go of what a member of a clash asks for. */
    public void letGo(ClashSet.Member member, String name) {
        ClashSet.LetGo what = member.letGo();
        client.change(name, "", draft -> switch (what.kind()) {
            case PIN, LEFT_OUT -> {
                PartKey key = PartKey.visit(client.visit().get());
                yield draft.with(key, WishesEdit.unpin(draft.part(key), what.subject(), what.phase()));
            }
            case AVOID -> draft.with(PartKey.CLIENT, without(draft.person(), "avoid", what.subject()));
            case NO_EQUIPMENT -> draft.with(PartKey.CLIENT, withItem(draft.person(), "equipment", what.subject()));
            case MINUTES -> draft.with(PartKey.CLIENT, moreMinutes(draft.person()));
            case CARRIED -> draft;
        });
    }

    private static Content moreMinutes(Content person) {
        int minutes =
                person.value("/minutes-per-session").map(Integer::parseInt).orElse(0);
        return person.with("/minutes-per-session", Math.min(MOST_MINUTES, minutes + MORE_MINUTES));
    }

    private static List<String> list(Content person, String key) {
        List<String> items = new ArrayList<>();
        for (int i = 0; person.value("/" + key + "/" + i).isPresent(); i++) {
            items.add(person.value("/" + key + "/" + i).orElseThrow());
        }
        return items;
    }

    private static Content without(Content person, String key, String item) {
        List<String> items = list(person, key);
        items.remove(item);
        return written(person, key, items);
    }

    private static Content withItem(Content person, String key, String item) {
        List<String> items = list(person, key);
        items.add(item);
        return written(person, key, items);
    }

    private static Content written(Content person, String key, List<String> items) {
        Content list = Content.emptyList();
        for (int i = 0; i < items.size(); i++) {
            list = list.with("/" + i, items.get(i));
        }
        return person.with("/" + key, list);
    }

    /**
     * Drills of the same family that this client may not have.
     *
     * @param reason what keeps it out, one clause
     */
    public record Barred(String drill, String reason) {}

    /** Blocks: judges the catalogue for this client. */
    public List<Barred> barred(Shown shown, Entry entry, int most) {
        Needs needs = shown.built().planning().needs();
        String family = drill(entry.drill()).map(Drill::family).orElse("");
        List<Barred> barred = new ArrayList<>();
        for (Offer offer : knowledge().builder().offers(needs).all()) {
            boolean safety = offer.barriers().stream().anyMatch(b -> b.kind() == Barrier.Kind.SAFETY);
            boolean related = offer.drill().family().equals(family) || safety;
            if (!offer.isOpen() && related && barred.size() < most) {
                barred.add(new Barred(
                        offer.id(), trade().say(offer.barriers().get(0).words())));
            }
        }
        return barred;
    }
}
