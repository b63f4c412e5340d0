package org.drillsheaf.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.drillsheaf.LocalText;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Goal;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.Variant;
import org.drillsheaf.drill.check.Readability;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.CoachSheet;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.Told;
import org.drillsheaf.program.Alternative;
import org.drillsheaf.program.CoachWishes;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.GoalReason;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.saying.Messages;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Speech;
import org.drillsheaf.screen.CoachStrip;
import org.drillsheaf.screen.Evidence;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.Verdict;

/** Puts reading, reasons and decisions together for the coach. Decides nothing. */
final class CoachSheetMaker {
    private final Vocabulary vocabulary;
    private final Messages messages;
    private final Speech speech;

    CoachSheetMaker(Vocabulary vocabulary, Messages messages) {
        this.vocabulary = vocabulary;
        this.messages = messages;
        this.speech = vocabulary.speech(messages.language());
    }

    /**
     * @param handout the client's pages of the same program, for their reading grade and what the report tells of them
     * @param things what the session needs, in the language of the sheet
     */
    CoachSheet sheet(DocumentOrder order, Program program, Frame frame, ClientHandout handout, List<Told> things) {
        Reading reading = order.now().reading();
        return new CoachSheet(
                frame,
                reading.age(),
                (int) Math.round(order.client().statureCentimetres()),
                rows(order),
                notTested(order),
                said(reading.headline()),
                reading.presentations().stream()
                        .filter(p -> p.verdict() != Verdict.NOT_SUPPORTED)
                        .map(this::guess)
                        .toList(),
                reading.nextTest().map(n -> said(n.reason())),
                drills(program),
                said(program.proof().words()),
                aims(program),
                cautions(order, program, handout),
                changed(order.now().wishes()),
                order.now().safety().remarks().stream().map(this::said).toList(),
                grade(handout),
                report(order, program, handout, things));
    }

    private static boolean isTested(MovementTest test, List<Finding> findings) {
        return findings.stream().anyMatch(f -> f.test().id().equals(test.id()) && f.kind() != FindingKind.NOT_TESTED);
    }

    private List<CoachSheet.NotTested> notTested(DocumentOrder order) {
        List<Finding> findings = order.now().reading().findings();
        Map<String, CoachSheet.NotTested> tests = new LinkedHashMap<>();
        for (Finding finding : findings) {
            if (!isTested(finding.test(), findings)) {
                CoachStrip strip =
                        CoachStrip.of(order.client(), order.now().reading().age(), finding);
                tests.putIfAbsent(
                        finding.test().id(),
                        new CoachSheet.NotTested(said(finding.test().saidName()), cutoff(strip)));
            }
        }
        return List.copyOf(tests.values());
    }

    private String cutoff(CoachStrip strip) {
        return strip.cutoff().isEmpty() ? "" : speech.say(strip.cutoff()) + " ± " + speech.say(strip.error());
    }

    private List<CoachSheet.Row> rows(DocumentOrder order) {
        List<Finding> all = order.now().reading().findings();
        List<Finding> findings =
                all.stream().filter(f -> isTested(f.test(), all)).toList();
        List<CoachSheet.Row> rows = new ArrayList<>();
        String before = "";
        for (Finding finding : findings) {
            CoachStrip strip =
                    CoachStrip.of(order.client(), order.now().reading().age(), finding);
            String id = finding.test().id();
            int same = (int)
                    findings.stream().filter(f -> f.test().id().equals(id)).count();
            boolean placed = strip.errors().isPresent();
            rows.add(new CoachSheet.Row(
                    said(finding.test().saidName()),
                    id.equals(before) ? 0 : same,
                    finding.side().map(s -> s.id()),
                    placed ? Optional.of(strip.errors().getAsDouble()) : Optional.empty(),
                    speech.say(finding.values()),
                    finding.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                    said(finding.kindWords()),
                    cutoff(strip),
                    strip.cutoff().isEmpty() ? speech.say(finding.reason()) : ""));
            before = id;
        }
        return rows;
    }

    /** In the language of the sheet; where a phrase is missing there, the English one is said. */
    private Told said(Saying saying) {
        return own(speech.say(saying));
    }

    /** The same as a sentence begins. */
    private Told opening(Saying saying) {
        return own(speech.opening(saying));
    }

    private CoachSheet.Guess guess(PresentationReading p) {
        // The title says that it is not known, the screen has the values.
        List<Told> unknown = new ArrayList<>(p.evidence(Evidence.Kind.NOT_KNOWN).stream()
                .map(Evidence::statement)
                .map(this::said)
                .toList());
        if (unknown.isEmpty()) {
            p.openBecause().forEach(because -> unknown.add(said(because)));
        }
        return new CoachSheet.Guess(
                said(p.name()),
                said(p.verdictWords()),
                words(p, Evidence.Kind.FOR),
                words(p, Evidence.Kind.AGAINST),
                unknown);
    }

    private List<Told> words(PresentationReading p, Evidence.Kind kind) {
        return p.evidence(kind).stream().map(Evidence::words).map(this::said).toList();
    }

    private List<CoachSheet.Why> drills(Program program) {
        List<CoachSheet.Why> whys = new ArrayList<>();
        for (Entry entry : program.now().entries()) {
            Optional<Alternative> next = entry.alternatives().stream().findFirst();
            whys.add(new CoachSheet.Why(
                    whys.size() + 1,
                    drill(entry.drill()),
                    entry.reasons().stream().map(this::reason).toList(),
                    next.map(a -> drill(a.drill())),
                    next.map(a -> Math.max(0, a.cost().coverage())).orElse(0)));
        }
        return whys;
    }

    /** Goal and strength, where a reason names them, get a column of their own. */
    private CoachSheet.Reason reason(Saying reason) {
        return GoalReason.of(reason)
                .map(r -> new CoachSheet.Reason(Optional.of(goal(r.goal())), r.strength(), opening(r.because())))
                .orElse(new CoachSheet.Reason(Optional.empty(), 0, opening(reason)));
    }

    private List<CoachSheet.Aim> aims(Program program) {
        return program.now().goals().stream()
                .filter(covered -> covered.need().target() > 0)
                .map(covered -> new CoachSheet.Aim(
                        goal(covered.need().goal()),
                        covered.need().weight(),
                        covered.need().target(),
                        covered.covered()))
                .toList();
    }

    /** What the conditions changed, drill by drill, and the sentences that the client got. */
    private List<Told> cautions(DocumentOrder order, Program program, ClientHandout handout) {
        LinkedHashSet<Told> lines = new LinkedHashSet<>();
        order.now()
                .safety()
                .active()
                .forEach(a -> lines.add(Told.best(a.condition().name(), languages())));
        int number = 0;
        for (Entry entry : program.now().entries()) {
            number++;
            if (!entry.variants().isEmpty()) {
                lines.add(changes(number, entry));
            }
        }
        handout.cautions().forEach(c -> lines.add(c.text()));
        return List.copyOf(lines);
    }

    /** The written changes of one drill by their names, in one language that all of them have; one that is gone by its id. */
    private Told changes(int number, Entry entry) {
        Optional<Drill> drill = vocabulary.library().catalogue().drill(entry.drill());
        List<LocalText> names = new ArrayList<>();
        names.add(drill.map(Drill::name).orElse(LocalText.english(entry.drill())));
        entry.variants()
                .forEach(id -> names.add(
                        drill.flatMap(d -> d.variant(id)).map(Variant::name).orElse(LocalText.english(id))));
        String language = languages().stream()
                .filter(l -> names.stream().allMatch(n -> n.has(l)))
                .findFirst()
                .orElse("en");
        List<String> said = names.stream().map(n -> n.best(List.of(language))).toList();
        return new Told(number + " " + said.get(0) + ": " + String.join("; ", said.subList(1, said.size())), language);
    }

    private List<Told> changed(CoachWishes wishes) {
        List<String> lines = new ArrayList<>();
        wishes.start().ifPresent(s -> lines.add(phase(s.phase()) + ": " + s.reason()));
        wishes.weights()
                .forEach(w -> lines.add(
                        phase(w.phase()) + ", " + goal(w.goal()).text() + " " + w.weight() + ": " + w.reason()));
        wishes.pins()
                .forEach(p -> lines.add(
                        speech.say(p.kind().words()) + ", " + drill(p.drill()).text() + ": " + p.reason()));
        wishes.doses().forEach(d -> lines.add(drill(d.drill()).text() + ": " + d.reason()));
        wishes.order()
                .forEach(o -> lines.add(phase(o.phase()) + ": "
                        + String.join(
                                ", ",
                                o.drills().stream().map(id -> drill(id).text()).toList())));
        return lines.stream().map(this::own).toList();
    }

    /** Over every sentence of the drills as they are printed; the formula counts syllables of English. */
    static Optional<Double> grade(ClientHandout handout) {
        if (!handout.frame().language().equals("en")) {
            return Optional.empty();
        }
        StringBuilder text = new StringBuilder();
        for (DrillBlock drill : handout.drills()) {
            drill.groups().forEach(g -> g.steps()
                    .forEach(s -> text.append(s.text().text()).append('\n')));
            drill.faults()
                    .forEach(f ->
                            text.append(f.fault()).append('\n').append(f.fix()).append('\n'));
            text.append(drill.purpose()).append('\n');
        }
        handout.cautions().forEach(c -> text.append(c.text().text()).append('\n'));
        handout.setUp().forEach(s -> text.append(s.text()).append('\n'));
        handout.whileTraining().forEach(s -> text.append(s.text()).append('\n'));
        return Optional.of(Readability.of(text.toString()).grade());
    }

    private List<CoachSheet.Item> report(
            DocumentOrder order, Program program, ClientHandout handout, List<Told> things) {
        String equipment = things.isEmpty()
                ? messages.say("facts.nothing", Map.of())
                : String.join(
                        messages.say("list.comma", Map.of()),
                        things.stream().map(Told::text).toList());
        String minutes = messages.say(
                "report.minutes", Map.of("minutes", handout.minutes(), "sessions", handout.sessionsPerWeek()));
        Map<String, Told> values = new TreeMap<>();
        for (String id : List.of("3", "4", "5", "6", "8", "9", "10", "11", "12", "14")) {
            values.put(id, own(messages.say("report.fixed." + id, Map.of())));
        }
        values.put("1", own(equipment));
        values.put("2", own(order.client().coach()));
        values.put("7", said(Saying.joined(Saying.Joint.SEMICOLON, program.startReasons())));
        values.put("13", own(minutes));
        values.put(
                "15",
                Told.best(
                        vocabulary
                                .phases()
                                .rows()
                                .get(program.start().ordinal())
                                .name(),
                        languages()));
        return IntStream.rangeClosed(1, 16)
                .mapToObj(String::valueOf)
                .map(id -> new CoachSheet.Item(id, Optional.ofNullable(values.get(id))))
                .toList();
    }

    private Told own(String text) {
        return new Told(text, messages.language());
    }

    private String phase(Phase phase) {
        return speech.say(phase.saidName());
    }

    private List<String> languages() {
        return List.of(messages.language(), "en");
    }

    private Told drill(String id) {
        return vocabulary
                .library()
                .catalogue()
                .drill(id)
                .map(d -> Told.best(d.name(), languages()))
                .orElse(own(id));
    }

    private Map<String, Goal> goals() {
        return vocabulary.library().catalogue().words().goals();
    }

    private Told goal(String id) {
        Goal goal = goals().get(id);
        return goal == null ? own(id) : Told.best(goal.name(), languages());
    }
}
