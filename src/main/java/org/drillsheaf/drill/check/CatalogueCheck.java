package org.drillsheaf.drill.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;
import org.drillsheaf.Problem;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.drill.safety.Condition;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.saying.Speech;

/**
 * Looks through a catalogue that could be read. What could not be read is told by the reader already.
 *
 * @param today the day that reviews are counted to
 * @param speech words what a safety rule measured
 */
public record CatalogueCheck(
        Catalogue catalogue, SafetyRules rules, DrillReader reader, LocalDate today, Speech speech) {
    /** A review older than this is told. House setting, months. */
    public static final int OLDEST_REVIEW_MONTHS = 24;
    /** Coverage is counted for clients whose condition began so long ago. */
    private static final int WEEKS_AGO = 16;

    /** What was found. */
    public record Result(List<Problem> problems, Coverage coverage) {
        public Result {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Looks at every drill and at the catalogue as a whole.
     *
     * @param progress is told how many drills are done
     */
    public Result run(IntConsumer progress) {
        PoseMeasuring measuring = new PoseMeasuring();
        Safety safety = new Safety(rules, reader, measuring);
        List<Problem> problems = new ArrayList<>();
        int done = 0;
        for (Drill drill : catalogue.drills()) {
            problems.addAll(drill(drill, safety, measuring));
            progress.accept(++done);
        }
        problems.addAll(new LadderCheck(catalogue).check());
        problems.addAll(new DuplicateCheck(catalogue).check());
        Coverage coverage = Coverage.of(catalogue, safety, clients());
        problems.addAll(coverage.problems(catalogue));
        problems.sort(Comparator.comparing(Problem::file).thenComparingInt(Problem::line));
        return new Result(problems, coverage);
    }

    /**
     * Looks at one drill and at its place among the others. A drill that is being written is told apart from the same drill of
     * the catalogue by putting it into the catalogue first ({@link Catalogue#with}).
     */
    public List<Problem> of(Drill drill) {
        PoseMeasuring measuring = new PoseMeasuring();
        List<Problem> problems = new ArrayList<>(drill(drill, new Safety(rules, reader, measuring), measuring));
        new LadderCheck(catalogue)
                .check().stream()
                        .filter(p -> p.file().equals(drill.written().file()))
                        .forEach(problems::add);
        problems.sort(Comparator.comparingInt(Problem::line));
        return problems;
    }

    /** Looks at one drill alone, which need not be of the catalogue. */
    public List<Problem> drill(Drill drill, Safety safety, PoseMeasuring measuring) {
        List<Problem> problems = new ArrayList<>();
        problems.addAll(new TextCheck(verbs(drill)).check(drill));
        for (TextPiece piece : TextPiece.of(drill)) {
            Drill version = version(drill, piece.variant());
            problems.addAll(new NumberCheck(version, measuring.solved(version)).check(piece));
            problems.addAll(new AngleCheck(measuring.solved(version)).check(piece));
        }
        pictures(drill, measuring, problems);
        problems.addAll(new PoseCheck(reader, rules, safety, today, speech).check(drill));
        review(drill, problems);
        facts(drill, problems);
        return problems;
    }

    private void pictures(Drill drill, PoseMeasuring measuring, List<Problem> problems) {
        Set<String> languages = drill.name().byLanguage().keySet();
        problems.addAll(new PictureCheck(drill, measuring.solved(drill)).check(languages));
        drill.variants().stream()
                .filter(v -> v.changes().has("alt-text"))
                .map(v -> version(drill, v.id()))
                .forEach(v -> problems.addAll(new PictureCheck(v, measuring.solved(v)).check(languages)));
    }

    private Drill version(Drill drill, String variant) {
        return drill.variant(variant)
                .flatMap(v -> reader.withVariants(drill, List.of(v), new org.drillsheaf.Problems()))
                .orElse(drill);
    }

    /** Those languages of the drill that have a list. */
    private static Map<String, VerbList> verbs(Drill drill) {
        Map<String, VerbList> verbs = new LinkedHashMap<>();
        for (String language : drill.name().byLanguage().keySet()) {
            VerbList.of(language).ifPresent(list -> verbs.put(language, list));
        }
        return verbs;
    }

    private void review(Drill drill, List<Problem> problems) {
        YamlNode place = drill.written().nearest("/reviewed-on");
        LocalDate day = drill.edition().reviewedOn();
        if (day.isAfter(today)) {
            problems.add(Problem.error(
                    place.file(), place.line(), "The review day " + day + " lies in the future", "Write the real day"));
        } else if (day.isBefore(today.minusMonths(OLDEST_REVIEW_MONTHS))) {
            problems.add(Problem.warning(
                    place.file(),
                    place.line(),
                    "The last review was on " + day + ", more than " + OLDEST_REVIEW_MONTHS + " months ago",
                    "Go through the drill and write the new day"));
        }
    }

    /** Facts of the trade: common practice, no source. */
    private static void facts(Drill drill, List<Problem> problems) {
        YamlNode out = drill.written().nearest("/breathing/out-seconds");
        boolean outside =
                drill.breathing().out().least() < 5 || drill.breathing().out().most() > 10;
        if (drill.breathing().fullExhale() && outside) {
            problems.add(Problem.warning(
                    out.file(), out.line(), "A full breath out lasts 5 to 10 seconds", "Write seconds in that range"));
        }
        boolean hamstrings = drill.strength("hamstring-and-pelvis") == 3
                && drill.phases().stream().anyMatch(p -> p.ordinal() >= 1);
        if (hamstrings && drill.dose().effort().most() < 4) {
            YamlNode effort = drill.written().nearest("/dose/effort");
            problems.add(Problem.warning(
                    effort.file(),
                    effort.line(),
                    "A hamstring drill from Restore on reaches effort 4 to 5",
                    "Let the range reach 4"));
        }
    }

    /** For every condition a client past its waiting times, who was seen getting down and up. */
    private Map<String, ClientSafety> clients() {
        UsualClient usual = new UsualClient(rules, today);
        Map<String, ClientSafety> clients = new LinkedHashMap<>();
        for (Condition condition : rules.conditions().values()) {
            clients.put(
                    condition.id(),
                    usual.with(condition, WEEKS_AGO, Set.of("down-to-floor", "balance", "another-adult")));
        }
        return clients;
    }
}
