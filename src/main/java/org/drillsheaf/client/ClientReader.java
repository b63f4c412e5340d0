package org.drillsheaf.client;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.Ids;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/** Reads a client's file. Immutable and safe for several threads. */
public final class ClientReader {
    private static final int OLDEST = 120;

    private final YamlSchema schema;
    private final KnownIds known;

    public ClientReader(YamlSchema schema, KnownIds known) {
        this.schema = schema;
        this.known = known;
    }

    /** Empty when anything in the file is wrong; the reasons then stand in {@code problems}, each with its line. */
    public Optional<ClientFile> read(YamlNode root, Problems problems) {
        Problems found = new Problems();
        schema.check(root, found);
        if (!found.hasErrors()) {
            checkAllIds(root, found);
        }
        Optional<ClientFile> file = found.hasErrors() ? Optional.empty() : Optional.of(file(root, found));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : file;
    }

    private ClientFile file(YamlNode root, Problems problems) {
        YamlNode node = root.get("client").orElseThrow();
        Client client = client(node, problems);
        List<ClientCondition> conditions = new ArrayList<>();
        for (YamlNode condition : items(root, "conditions")) {
            conditions.add(condition(condition, problems));
        }
        List<Visit> visits = new ArrayList<>();
        Set<LocalDate> dates = new LinkedHashSet<>();
        for (YamlNode visit : items(root, "visits")) {
            Optional<LocalDate> date = day(visit, "date", problems);
            if (date.isPresent() && !dates.add(date.get())) {
                visit.error(
                        problems,
                        "There are two visits on " + date.get(),
                        "Keep one visit a date and put all values of that day into it");
            } else {
                date.ifPresent(d -> visits.add(visit(visit, d, problems)));
            }
        }
        visits.sort(Comparator.comparing(Visit::date));
        checkAges(client, node.get("born").orElseThrow(), visits, problems);
        return new ClientFile(root.file(), client, conditions, visits);
    }

    private static void checkAges(Client client, YamlNode born, List<Visit> visits, Problems problems) {
        if (visits.isEmpty()) {
            return;
        }
        LocalDate last = visits.get(visits.size() - 1).date();
        if (client.born().isAfter(last) && client.born().year() > last.getYear()) {
            born.error(
                    problems,
                    "The birth year " + client.born().year() + " lies in the future of the visit on " + last,
                    "Write the year of birth with four digits");
            return;
        }
        if (client.born().ageOn(last) > OLDEST) {
            born.error(
                    problems,
                    "The client would be " + client.born().ageOn(last) + " years old on " + last,
                    "Check the line “born”");
            return;
        }
        for (Visit visit : visits) {
            if (client.born().isAfter(visit.date())) {
                problems.error(
                        born.file(),
                        visit.line(),
                        "The visit on " + visit.date() + " is before the client was born ("
                                + born.text().orElse("") + ")",
                        "Check the date of the visit and the line “born”");
            }
        }
    }

    private Client client(YamlNode node, Problems problems) {
        return new Client(
                word(node, "id"),
                word(node, "name"),
                node.text("called").orElse(word(node, "name")),
                born(node.get("born").orElseThrow(), problems),
                node.text("sex").flatMap(Sex::of),
                node.number("stature-cm").orElseThrow(),
                node.number("mass-kg").map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                node.texts("languages"),
                node.text("paper").flatMap(Paper::of).orElse(Paper.A4),
                node.text("print").flatMap(Print::of).orElse(Print.STANDARD),
                word(node, "coach"),
                new LinkedHashSet<>(node.texts("equipment")),
                new LinkedHashSet<>(node.texts("avoid")),
                node.integer("minutes-per-session").orElseThrow(),
                node.integer("sessions-per-week").orElseThrow(),
                node.text("wish"));
    }

    private static Born born(YamlNode node, Problems problems) {
        Optional<LocalDate> day = node.date();
        if (day.isPresent()) {
            return Born.on(day.get());
        }
        Optional<Integer> year = node.integer();
        if (year.isEmpty()) {
            node.error(problems, "“born” is neither a year nor a day", "Write 1979 or 1979-05-17");
        }
        return Born.in(year.orElse(2000));
    }

    private static ClientCondition condition(YamlNode node, Problems problems) {
        Map<String, String> settings = new LinkedHashMap<>();
        node.get("settings").ifPresent(s -> s.entries()
                .forEach((name, value) -> value.text().ifPresent(text -> settings.put(name, text))));
        Set<Side> sides =
                switch (node.text("side").orElse("")) {
                    case "left" -> Set.of(Side.LEFT);
                    case "right" -> Set.of(Side.RIGHT);
                    case "both" -> Set.of(Side.LEFT, Side.RIGHT);
                    default -> Set.of();
                };
        return new ClientCondition(
                word(node, "id"),
                sides,
                node.get("since").flatMap(since -> dayOrMonth(since, problems)),
                settings,
                node.get("release").flatMap(r -> release(r, problems)),
                new LinkedHashSet<>(
                        node.get("release").map(r -> r.texts("answers")).orElse(List.of())),
                node.line());
    }

    /** A month counts from its last day, so that time since is never made longer than it is. */
    private static Optional<LocalDate> dayOrMonth(YamlNode node, Problems problems) {
        Optional<LocalDate> day = node.date();
        if (day.isPresent()) {
            return day;
        }
        try {
            return Optional.of(YearMonth.parse(node.text().orElse("")).atEndOfMonth());
        } catch (DateTimeException e) {
            node.error(problems, "“since” is no date", "Write a day such as 2026-02-10 or a month such as 2026-02");
            return Optional.empty();
        }
    }

    private static Optional<Release> release(YamlNode node, Problems problems) {
        return day(node, "date", problems).map(date -> new Release(word(node, "by"), date, word(node, "words")));
    }

    private static Visit visit(YamlNode node, LocalDate date, Problems problems) {
        Map<String, SafetyAnswer> safety = new LinkedHashMap<>();
        node.get("safety")
                .ifPresent(s -> s.entries().forEach((id, answer) -> safety.put(id, answer(answer, problems))));
        Map<String, Boolean> observed = new LinkedHashMap<>();
        node.get("observed").ifPresent(o -> o.entries()
                .forEach((key, value) -> value.truth().ifPresent(truth -> observed.put(key, truth))));
        Map<String, String> declined = new LinkedHashMap<>();
        for (YamlNode item : node.get("coach").map(c -> items(c, "declined")).orElse(List.of())) {
            Optional<String> condition = item.text("condition");
            Optional<String> reason = item.text("reason");
            if (condition.isEmpty() || reason.isEmpty()) {
                item.error(
                        problems,
                        "A declined condition needs its id and a reason",
                        "Write {condition: hypermobility, reason: …}");
            } else {
                declined.put(condition.get(), reason.get());
            }
        }
        return new Visit(
                date,
                safety,
                observed,
                node.text("measured-by"),
                node.get("next").flatMap(n -> appointment(n, problems)),
                node.get("log").map(ClientReader::log).orElse(PracticeLog.NOTHING_SAID),
                node.get("screen"),
                node.get("coach"),
                declined,
                node.text("handout-note").filter(text -> !text.isBlank()),
                node.line());
    }

    private static SafetyAnswer answer(YamlNode node, Problems problems) {
        if (node.isValue()) {
            return new SafetyAnswer(
                    answerWord(node), Optional.empty(), Optional.empty(), Optional.empty(), node.line());
        }
        return new SafetyAnswer(
                answerWord(node.get("answer").orElseThrow()),
                node.text("part"),
                node.has("date") ? day(node, "date", problems) : Optional.empty(),
                node.get("release").flatMap(r -> release(r, problems)),
                node.line());
    }

    private static Answer answerWord(YamlNode node) {
        return node.truth()
                .map(yes -> yes ? Answer.YES : Answer.NO)
                .or(() -> node.text().flatMap(Answer::of))
                .orElse(Answer.NOT_SURE);
    }

    private static Optional<Appointment> appointment(YamlNode node, Problems problems) {
        Optional<LocalDate> date = day(node, "date", problems);
        Optional<LocalTime> time = Optional.empty();
        Optional<String> text = node.text("time");
        if (text.isPresent()) {
            try {
                time = Optional.of(LocalTime.parse(text.get()));
            } catch (DateTimeException e) {
                node.get("time").orElse(node).error(problems, "“time” is no time of day", "Write it as \"09:30\"");
            }
        }
        Optional<LocalTime> known = time;
        return date.map(d -> new Appointment(d, known));
    }

    private static PracticeLog log(YamlNode node) {
        return new PracticeLog(
                node.number("days-per-week").map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                node.integer("effort").map(OptionalInt::of).orElse(OptionalInt.empty()),
                node.integer("new-pain").map(OptionalInt::of).orElse(OptionalInt.empty()),
                node.truth("pain-stays"),
                node.truth("other-reason"));
    }

    private void checkAllIds(YamlNode root, Problems problems) {
        YamlNode client = root.get("client").orElseThrow();
        checkList(client, "equipment", known.equipment(), "equipment", problems);
        checkList(client, "avoid", known.positions(), "body position", problems);
        client.get("wish").ifPresent(w -> Ids.check(w, w.text().orElse(""), known.goals(), "goal", problems));
        Set<String> seen = new LinkedHashSet<>();
        for (YamlNode condition : items(root, "conditions")) {
            YamlNode id = condition.get("id").orElse(condition);
            String name = id.text().orElse("");
            if (Ids.check(id, name, known.conditions().keySet(), "condition", problems)) {
                condition.get("settings").ifPresent(s -> s.entries()
                        .forEach((setting, node) -> Ids.check(
                                node,
                                setting,
                                known.conditions().getOrDefault(name, Set.of()),
                                "setting of " + name,
                                problems)));
            }
            if (!seen.add(name)) {
                condition.error(
                        problems,
                        "The condition " + name + " stands twice",
                        "Keep one entry; “side: both” covers both sides");
            }
        }
        for (YamlNode visit : items(root, "visits")) {
            visit.get("safety").ifPresent(s -> s.entries()
                    .forEach((id, node) -> Ids.check(node, id, known.safetyQuestions(), "safety question", problems)));
        }
    }

    private static void checkList(YamlNode node, String key, Set<String> known, String kind, Problems problems) {
        for (YamlNode item : items(node, key)) {
            Ids.check(item, item.text().orElse(""), known, kind, problems);
        }
    }

    private static Optional<LocalDate> day(YamlNode node, String key, Problems problems) {
        Optional<LocalDate> date = node.date(key);
        if (date.isEmpty()) {
            node.get(key).orElse(node).error(problems, "“" + key + "” is no day", "Write it as 2026-03-05");
        }
        return date;
    }

    private static List<YamlNode> items(YamlNode node, String key) {
        return node.get(key).map(YamlNode::items).orElse(List.of());
    }

    private static String word(YamlNode node, String key) {
        return node.text(key).orElseThrow();
    }
}
