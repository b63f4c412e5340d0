package org.drillsheaf.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillsheaf.Side;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.program.GoalNeed;
import org.drillsheaf.program.PhaseNeeds;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.Contradiction;
import org.drillsheaf.screen.Evidence;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.NextTest;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.SafetyReading;
import org.drillsheaf.screen.TestChange;

/** A reading for machines. Keys and enum words are those of the data files and stay as they are. */
final class ReadingJson {
    private ReadingJson() {}

    static Map<String, Object> of(Course.Stop stop, List<PhaseNeeds> phases) {
        ClientVisit visit = stop.visit();
        Reading reading = visit.reading();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("client", visit.client().id());
        json.put("date", reading.date().toString());
        json.put("age", reading.age());
        json.put("safety", safety(reading.safety()));
        json.put(
                "findings",
                reading.findings().stream().map(ReadingJson::finding).toList());
        json.put(
                "presentations",
                reading.presentations().stream().map(ReadingJson::presentation).toList());
        reading.leading().ifPresent(leading -> json.put("leading", leading.id()));
        reading.layers().underneath().ifPresent(side -> json.put("underneath", side.id()));
        reading.layers().onTop().ifPresent(name -> json.put("on-top", name));
        json.put("lax", reading.lax());
        json.put(
                "contradictions",
                reading.contradictions().stream()
                        .map(ReadingJson::contradiction)
                        .toList());
        reading.nextTest().ifPresent(next -> json.put("next-test", nextTest(next)));
        json.put(
                "restrictions", reading.restrictions().stream().map(r -> r.id()).toList());
        json.put("conditions", reading.conditions().stream().map(c -> c.id()).toList());
        json.put("remarks", reading.remarks());
        stop.change().ifPresent(change -> json.put("change", change(change)));
        json.put("goals", phases.stream().map(ReadingJson::phase).toList());
        return json;
    }

    private static Map<String, Object> change(Course.Change change) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("since", change.comparison().before().toString());
        json.put(
                "tests",
                change.comparison().changes().stream().map(ReadingJson::test).toList());
        json.put("side-order", change.comparison().sideOrder());
        json.put("gate", change.gate().gate().id());
        json.put("gate-status", word(change.gate().status()));
        json.put("next", word(change.decision().step()));
        json.put("reasons", change.decision().reasons());
        return json;
    }

    private static Map<String, Object> test(TestChange change) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("test", change.test().id());
        change.side().map(Side::id).ifPresent(side -> json.put("side", side));
        change.part().ifPresent(part -> json.put("part", part));
        json.put("change", word(change.kind()));
        json.put("before", change.before());
        json.put("now", change.now());
        json.put("new-pain", change.newPain());
        return json;
    }

    private static Map<String, Object> phase(PhaseNeeds phase) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("phase", phase.phase().id());
        json.put(
                "goals",
                phase.goals().stream()
                        .filter(g -> g.weight() > 0)
                        .map(ReadingJson::goal)
                        .toList());
        return json;
    }

    private static Map<String, Object> goal(GoalNeed goal) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("goal", goal.goal());
        json.put("weight", goal.weight());
        json.put("target", goal.target());
        json.put("reasons", goal.reasons());
        return json;
    }

    private static Map<String, Object> safety(SafetyReading safety) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("status", word(safety.status()));
        json.put("stopping", questions(safety.stopping()));
        json.put("holding", questions(safety.holding()));
        json.put("unanswered", safety.unanswered().stream().map(q -> q.id()).toList());
        json.put("advice", safety.advice());
        return json;
    }

    private static List<String> questions(List<SafetyReading.Flag> flags) {
        return flags.stream().map(f -> f.question().id()).toList();
    }

    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("test", finding.test().id());
        finding.side().map(Side::id).ifPresent(side -> json.put("side", side));
        json.put("finding", word(finding.kind()));
        finding.word().ifPresent(word -> json.put("word", word));
        json.put("value", finding.values());
        json.put("reason", finding.reason());
        return json;
    }

    private static Map<String, Object> presentation(PresentationReading reading) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("presentation", reading.id());
        reading.side().map(Side::id).ifPresent(side -> json.put("side", side));
        json.put("verdict", word(reading.verdict()));
        json.put("mixed", reading.mixed());
        json.put("leaning", reading.leaning());
        json.put("for", words(reading, Evidence.Kind.FOR));
        json.put("against", words(reading, Evidence.Kind.AGAINST));
        json.put("not-known", words(reading, Evidence.Kind.NOT_KNOWN));
        json.put("open-because", reading.openBecause());
        return json;
    }

    private static List<Saying> words(PresentationReading reading, Evidence.Kind kind) {
        return reading.evidence(kind).stream().map(Evidence::words).toList();
    }

    private static Map<String, Object> contradiction(Contradiction contradiction) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", contradiction.id());
        json.put("findings", contradiction.findings());
        json.put("meaning", contradiction.meaning());
        json.put("next-step", contradiction.nextStep());
        json.put("refer", contradiction.refer());
        return json;
    }

    private static Map<String, Object> nextTest(NextTest next) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("test", next.test().id());
        json.put("bits", next.bits());
        json.put("minutes", next.minutes());
        json.put("reason", next.reason());
        return json;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
