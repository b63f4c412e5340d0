package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.client.PracticeLog;
import org.drillsheaf.client.Sex;
import org.drillsheaf.client.Visit;

/**
 * One row of a table of invented screens.
 *
 * @param person sex and age, and what the row is about
 * @param cells value as written, by id of the test
 * @param conditions as written
 * @param reading expected, as written
 */
record InventedScreen(String number, String person, Map<String, String> cells, String conditions, String reading) {
    static final LocalDate DAY = LocalDate.of(2026, 6, 15);
    private static final List<String> TESTS = List.of(
            "thigh-drop",
            "hip-extension",
            "hip-internal-rotation",
            "hip-external-rotation",
            "straight-leg-raise",
            "shoulder-flexion",
            "shoulder-internal-rotation",
            "trunk-rotation",
            "knee-to-wall",
            "squat-depth",
            "toe-touch",
            "infrasternal-angle",
            "back-rib-expansion",
            "breath-out",
            "sway-back-stance",
            "joint-laxity");

    static List<InventedScreen> table(String resource) {
        String text;
        try (var in = InventedScreen.class.getResourceAsStream(resource)) {
            text = new String(
                    java.util.Objects.requireNonNull(in).readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        List<InventedScreen> rows = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (!line.matches("\\w+ +\\|.*") || line.startsWith("no ")) {
                continue;
            }
            List<String> cells =
                    Arrays.stream(line.split("\\|")).map(String::strip).toList();
            assertThat(cells).as(line).hasSize(TESTS.size() + 4);
            Map<String, String> values = new LinkedHashMap<>();
            for (int i = 0; i < TESTS.size(); i++) {
                values.put(TESTS.get(i), cells.get(i + 2));
            }
            rows.add(new InventedScreen(
                    cells.get(0), cells.get(1), values, cells.get(TESTS.size() + 2), cells.get(TESTS.size() + 3)));
        }
        return rows;
    }

    @Override
    public String toString() {
        return number + " " + person;
    }

    Optional<Sex> sex() {
        return switch (person.charAt(0)) {
            case 'F' -> Optional.of(Sex.FEMALE);
            case 'M' -> Optional.of(Sex.MALE);
            default -> Optional.empty();
        };
    }

    int age() {
        return Integer.parseInt(person.substring(1).split("\\D", 2)[0]);
    }

    Client client() {
        return House.client(sex(), DAY.getYear() - age());
    }

    /** Written as {@code id [side] [n weeks] [known] [lifted]}. */
    List<ClientCondition> conditionList() {
        if (conditions.isEmpty()) {
            return List.of();
        }
        List<ClientCondition> list = new ArrayList<>();
        for (String text : conditions.split(",")) {
            List<String> words = List.of(text.strip().split(" "));
            int weeks = words.indexOf("weeks");
            list.add(new ClientCondition(
                    words.get(0),
                    Arrays.stream(Side.values())
                            .filter(s -> words.contains(s.id()))
                            .collect(Collectors.toSet()),
                    weeks > 0 ? Optional.of(DAY.minusWeeks(Integer.parseInt(words.get(weeks - 1)))) : Optional.empty(),
                    settings(words),
                    Optional.empty(),
                    java.util.Set.of(),
                    0));
        }
        return list;
    }

    private static Map<String, String> settings(List<String> words) {
        Map<String, String> settings = new LinkedHashMap<>();
        if (words.contains("lifted")) {
            settings.put("limits-lifted", "yes");
        }
        if (words.contains("known")) {
            settings.put("approach-known", "yes");
        }
        return settings;
    }

    /** The screen as a coach would write it. */
    String yaml() {
        return yaml(cells);
    }

    static String yaml(Map<String, String> cells) {
        StringBuilder yaml = new StringBuilder("{");
        cells.forEach((id, cell) -> {
            MovementTest test = House.test(id);
            if (!cell.equals("-")) {
                yaml.append(id).append(": {unit: ").append(test.unit().id()).append(", ");
                yaml.append(body(test, cell)).append("},\n");
            }
        });
        return yaml.append("}").toString();
    }

    private static String body(MovementTest test, String cell) {
        if (test.norm() instanceof Norm.Pair) {
            String[] both = cell.split("/");
            return "hip: " + both[0] + ", shoulder: " + both[1];
        }
        if (test.sided()) {
            String[] sides = cell.split("/");
            return "left: " + value(sides[0]) + ", right: " + value(sides[1]);
        }
        String value = value(cell);
        return value.startsWith("{") ? value.substring(1, value.length() - 1) : "value: " + value;
    }

    private static String value(String cell) {
        if (cell.equals("-")) {
            return "not-tested";
        }
        String number = cell.replaceAll("[^0-9.\\-].*", "");
        String marks = cell.substring(number.length()).strip();
        List<String> parts = new ArrayList<>();
        if (!number.isEmpty()) {
            parts.add("value: " + number);
        }
        if (marks.contains("p")) {
            parts.add("pain: 5");
        }
        if (marks.contains("t")) {
            parts.add(marks.contains("p") ? "tingling: yes" : "tucks: yes");
        }
        if (marks.contains("n")) {
            parts.add("tucks: no");
        }
        if (marks.contains("+")) {
            parts.add("or-more: yes");
        }
        return "{" + String.join(", ", parts) + "}";
    }

    Reading read() {
        return read(yaml());
    }

    Reading read(String screen) {
        return read(client(), conditionList(), screen, Map.of());
    }

    static Reading read(Client client, List<ClientCondition> conditions, String screen, Map<String, Boolean> observed) {
        Visit visit = visit(DAY, screen, observed);
        Problems problems = new Problems();
        List<Screen> screens = new ScreenReader(House.RULES.battery())
                .read(new ClientFile("test.yaml", client, conditions, List.of(visit)), problems);
        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        return House.RULES.read(client, conditions, visit, screens.get(0), Optional.empty());
    }

    /** Verdicts alone, without the evidence and the next test: many screens in little time. */
    static Map<String, Verdict> verdicts(Client client, String screen) {
        Visit visit = visit(DAY, screen, Map.of());
        Problems problems = new Problems();
        Screen read = new ScreenReader(House.RULES.battery())
                .read(new ClientFile("test.yaml", client, List.of(), List.of(visit)), problems)
                .get(0);
        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        ReadingFacts facts =
                House.RULES.facts(client, List.of(), visit, read, client.born().ageOn(DAY), Side.RIGHT);
        Phrases phrases = new Phrases(House.RULES.battery(), facts);
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        House.RULES
                .judges(facts, phrases)
                .forEach(j -> verdicts.put(
                        j.presentation().id() + j.side().map(s -> " " + s.id()).orElse(""), j.verdict()));
        return verdicts;
    }

    static Visit visit(LocalDate date, String screen, Map<String, Boolean> observed) {
        return new Visit(
                date,
                House.allNo(),
                observed,
                Optional.empty(),
                Optional.empty(),
                PracticeLog.NOTHING_SAID,
                Optional.of(House.yaml(screen)),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                1);
    }

    /** A reading in the words of the table. */
    static String inShort(Reading reading) {
        List<String> held = new ArrayList<>(
                reading.supported().stream().map(InventedScreen::code).toList());
        List<String> open = reading.open().stream()
                .filter(p -> !p.id().equals("none"))
                .map(InventedScreen::code)
                .toList();
        List<String> more = new ArrayList<>();
        reading.layers().underneath().ifPresent(s -> more.add(s == Side.LEFT ? "under-L" : "under-R"));
        reading.layers().onTop().ifPresent(n -> more.add("on-top"));
        if (reading.layers().local().stream().anyMatch(l -> said(l.words()).startsWith("Short hip fronts"))) {
            more.add("local");
        }
        if (reading.lax()) {
            more.add("lax");
        }
        if (!reading.referrals().isEmpty()) {
            more.add("refer");
        }
        List<String> remarks = new ArrayList<>();
        reading.open().stream().filter(PresentationReading::leaning).forEach(p -> remarks.add("leaning " + code(p)));
        reading.open().stream().filter(PresentationReading::mixed).forEach(p -> remarks.add("mixed " + code(p)));
        if (held.isEmpty()) {
            held.add("open " + String.join(",", new TreeSet<>(open)));
        } else if (!open.isEmpty()) {
            remarks.add(0, "open " + String.join(",", new TreeSet<>(open)));
        }
        held.addAll(more);
        return String.join("+", held) + (remarks.isEmpty() ? "" : " (" + String.join("; ", remarks) + ")");
    }

    private static String code(PresentationReading reading) {
        String side = reading.side().map(s -> s == Side.LEFT ? "-L" : "-R").orElse("");
        return switch (reading.id()) {
            case "extension-both-sides" -> "EXT";
            case "extension-lax-give" -> "LAX";
            case "extension-swayed" -> "SWAY";
            case "one-side-forward" -> "OSF" + side;
            default -> "NONE";
        };
    }
}
