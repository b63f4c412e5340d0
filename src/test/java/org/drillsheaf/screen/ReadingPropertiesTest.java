package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every screen, checked on random ones and on all tables. */
class ReadingPropertiesTest {
    private static final Client CLIENT = House.client(Optional.of(Sex.FEMALE), 1986);

    /** Values near what decides, so that all findings occur. */
    @Provide
    Arbitrary<Map<String, String>> screens() {
        Map<String, Arbitrary<String>> cells = new LinkedHashMap<>();
        for (MovementTest test : House.RULES.battery().tests().values()) {
            cells.put(test.id(), cell(test));
        }
        List<String> ids = List.copyOf(cells.keySet());
        return Combinators.combine(List.copyOf(cells.values())).as(values -> {
            Map<String, String> screen = new LinkedHashMap<>();
            for (int i = 0; i < ids.size(); i++) {
                screen.put(ids.get(i), values.get(i));
            }
            return screen;
        });
    }

    private static Arbitrary<String> cell(MovementTest test) {
        if (test.norm() instanceof Norm.Pair) {
            Arbitrary<String> part = Arbitraries.integers().between(0, 10).map(String::valueOf);
            return Combinators.combine(part, part)
                    .as((a, b) -> a + "/" + b)
                    .optional(0.85)
                    .map(c -> c.orElse("-"));
        }
        Arbitrary<String> one = Arbitraries.integers()
                .between(0, 40)
                .map(i -> number(test, i))
                .optional(0.9)
                .map(v -> v.orElse("-"));
        Arbitrary<String> painful = Arbitraries.of("", "", "", "", "", "", "", "p");
        Arbitrary<String> value = Combinators.combine(one, painful).as((v, p) -> v.equals("-") ? v : v + p);
        if (test.sided()) {
            return Combinators.combine(value, value).as((l, r) -> l + "/" + r);
        }
        return test.marks().contains("tucks")
                ? Combinators.combine(one, Arbitraries.of(" t", " n", "")).as((v, t) -> v.equals("-") ? v : v + t)
                : one;
    }

    /** One of 41 values from clearly limited to clearly beyond. */
    private static String number(MovementTest test, int i) {
        double low =
                switch (test.id()) {
                    case "thigh-drop" -> -45;
                    case "hip-extension" -> -2;
                    case "squat-depth" -> -24;
                    case "toe-touch" -> -22;
                    case "infrasternal-angle" -> 85;
                    case "back-rib-expansion" -> 0.4;
                    case "breath-out" -> 1;
                    case "joint-laxity" -> 0;
                    case "shoulder-flexion" -> 130;
                    case "straight-leg-raise" -> 58;
                    case "trunk-rotation" -> 25;
                    case "knee-to-wall" -> 5;
                    default -> 20;
                };
        double high = test.id().equals("joint-laxity") ? 9 : test.id().equals("breath-out") ? 9 : Double.MAX_VALUE;
        double value = Math.min(low + i * test.step().doubleValue(), high);
        return test.step().scale() > 0
                ? String.format(java.util.Locale.ROOT, "%.1f", value)
                : String.valueOf((int) value);
    }

    private static Reading read(Map<String, String> cells) {
        return InventedScreen.read(CLIENT, List.of(), InventedScreen.yaml(cells), Map.of());
    }

    private static Map<String, Verdict> verdicts(Map<String, String> cells) {
        return InventedScreen.verdicts(CLIENT, InventedScreen.yaml(cells));
    }

    @Property(tries = 60)
    void takingAnyOneValueAwayLeavesAVerdictOrOpensIt(@ForAll("screens") Map<String, String> cells) {
        checkTakingAway(cells, CLIENT);
    }

    private static void checkTakingAway(Map<String, String> cells, Client client) {
        Map<String, Verdict> before = InventedScreen.verdicts(client, InventedScreen.yaml(cells));
        for (Map<String, String> fewer : withOneValueLess(cells)) {
            InventedScreen.verdicts(client, InventedScreen.yaml(fewer)).forEach((name, verdict) -> assertThat(verdict)
                    .as(name + " of " + fewer + " against " + cells)
                    .isIn(before.get(name), Verdict.OPEN));
        }
    }

    static List<Map<String, String>> withOneValueLess(Map<String, String> cells) {
        List<Map<String, String>> all = new ArrayList<>();
        cells.forEach((id, cell) -> {
            if (!cell.equals("-")) {
                all.add(changed(cells, id, "-"));
                if (House.test(id).sided()) {
                    String[] sides = cell.split("/");
                    all.add(changed(cells, id, "-/" + sides[1]));
                    all.add(changed(cells, id, sides[0] + "/-"));
                }
            }
        });
        return all;
    }

    private static Map<String, String> changed(Map<String, String> cells, String id, String cell) {
        Map<String, String> copy = new LinkedHashMap<>(cells);
        copy.put(id, cell);
        return copy;
    }

    static List<InventedScreen> rows() {
        List<InventedScreen> rows = new ArrayList<>(InventedScreen.table("invented-screens.txt"));
        rows.addAll(InventedScreen.table("further-screens.txt"));
        return rows;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void takingAwayHoldsInEveryRowOfTheTables(InventedScreen row) {
        checkTakingAway(row.cells(), row.client());
    }

    @Property(tries = 40)
    void swappingSidesSwapsTheReading(@ForAll("screens") Map<String, String> cells) {
        Map<String, String> swapped = new LinkedHashMap<>();
        cells.forEach((id, cell) -> swapped.put(id, House.test(id).sided() ? swap(cell) : cell));

        Reading here = read(cells);
        Reading there = read(swapped);

        Map<String, Verdict> expected = new LinkedHashMap<>();
        verdicts(cells).forEach((name, verdict) -> expected.put(swapName(name), verdict));
        assertThat(verdicts(swapped)).isEqualTo(expected);
        assertThat(there.layers().underneath())
                .isEqualTo(here.layers().underneath().map(Side::opposite));
        assertThat(there.layers().onTop()).isEqualTo(here.layers().onTop());
        assertThat(there.nextTest().map(n -> n.test().id()))
                .isEqualTo(here.nextTest().map(n -> n.test().id()));
        assertThat(there.contradictions()).hasSameSizeAs(here.contradictions());
    }

    private static String swap(String cell) {
        String[] sides = cell.split("/");
        return sides[1] + "/" + sides[0];
    }

    private static String swapName(String name) {
        return name.endsWith(" left")
                ? name.replace(" left", " right")
                : name.endsWith(" right") ? name.replace(" right", " left") : name;
    }

    @Property(tries = 60)
    void aPainfulMarkNeverMakesAVerdictHold(@ForAll("screens") Map<String, String> cells) {
        Map<String, Verdict> before = verdicts(cells);
        cells.forEach((id, cell) -> {
            if (House.test(id).sided() && cell.matches("-?[0-9.]+/.*")) {
                String painful = cell.replaceFirst("/", "p/");
                verdicts(changed(cells, id, painful)).forEach((name, verdict) -> assertThat(verdict)
                        .as(name + " with pain in " + id)
                        .isIn(before.get(name), Verdict.OPEN));
            }
        });
    }

    @Property(tries = 40)
    void theOrderOfInputDoesNotMatter(@ForAll("screens") Map<String, String> cells, @ForAll long seed) {
        List<String> ids = new ArrayList<>(cells.keySet());
        Collections.shuffle(ids, new Random(seed));
        Map<String, String> shuffled = new LinkedHashMap<>();
        ids.forEach(id -> shuffled.put(id, cells.get(id)));

        Reading here = read(cells);
        Reading there = read(shuffled);

        assertThat(there.presentations().toString().replaceAll("line=\\d+", ""))
                .isEqualTo(here.presentations().toString().replaceAll("line=\\d+", ""));
        assertThat(there.findings())
                .extracting(Finding::words)
                .isEqualTo(here.findings().stream().map(Finding::words).toList());
        assertThat(there.nextTest().map(NextTest::reason))
                .isEqualTo(here.nextTest().map(NextTest::reason));
    }

    /** Through all tests, ages and sexes: moved by less than its line, a value never goes from full to limited or back. */
    @Property(tries = 2000)
    void aValueMovedWithinItsErrorNeverJumpsOverTheLine(
            @ForAll("testIds") String id,
            @ForAll("ages") int age,
            @ForAll boolean female,
            @ForAll("positions") double share) {
        MovementTest test = House.test(id);
        Scale scale = new Scale(test, Optional.of(female ? Sex.FEMALE : Sex.MALE), age, java.math.BigDecimal.ONE);
        long line = scale.variants().get(0).line();
        double step = test.step().doubleValue();
        long steps = Math.round((test.lowest() + share * (test.highest() - test.lowest())) / step);
        Finding here = finding(scale, steps * step);
        for (long moved = 1; moved < line; moved++) {
            Finding there = finding(scale, (steps + moved) * step);
            assertThat(List.of(here.limited(), there.limited()))
                    .as(id + " " + here.values() + " and " + there.values())
                    .isNotEqualTo(
                            List.of(org.drillsheaf.screen.rule.Truth.TRUE, org.drillsheaf.screen.rule.Truth.FALSE))
                    .isNotEqualTo(
                            List.of(org.drillsheaf.screen.rule.Truth.FALSE, org.drillsheaf.screen.rule.Truth.TRUE));
        }
    }

    @Provide
    Arbitrary<String> testIds() {
        return Arbitraries.of(House.RULES.battery().tests().values().stream()
                .filter(t -> t.norm() instanceof Norm.Threshold || t.norm() instanceof Norm.Range)
                .map(MovementTest::id)
                .toList());
    }

    @Provide
    Arbitrary<Integer> ages() {
        return Arbitraries.integers().between(18, 95);
    }

    @Provide
    Arbitrary<Double> positions() {
        return Arbitraries.doubles().between(0, 1);
    }

    private static Finding finding(Scale scale, double value) {
        MovementTest test = scale.test();
        Optional<Side> side = test.places().get(0);
        Measurement measurement = new Measurement(
                test.id(),
                side,
                Optional.of(value),
                Map.of(),
                Measurement.Bound.EXACT,
                false,
                Map.of(),
                Optional.empty(),
                InventedScreen.DAY,
                1);
        return new FindingMaker(scale, Optional.empty()).finding(side, Optional.of(measurement));
    }
}
