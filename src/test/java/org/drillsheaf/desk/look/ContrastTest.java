package org.drillsheaf.desk.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every colour of a theme can be read on every ground it may lie on. Limits and formula: W3C, WCAG 2.1, 1.4.3 and 1.4.11. */
class ContrastTest {
    private static final double OF_TEXT = 4.5;
    private static final double OF_CONTROLS = 3;
    private static final Path LOOK = Path.of("src/main/resources/org/drillsheaf/desk/look");
    private static final List<String> SHEETS = List.of("controls", "frame", "sheets", "drills");
    private static final List<String> GROUNDS =
            List.of("window", "sheet", "band", "well", "wash", "caution-wash", "paper");

    /** Colours of text, each with the grounds it lies on. */
    private static final Map<String, List<String>> TEXTS = Map.of(
            "ink", GROUNDS.subList(0, 6),
            "ink-2", GROUNDS.subList(0, 6),
            "ink-3", GROUNDS.subList(0, 6),
            "caution", List.of("caution-wash"),
            "on-accent", List.of("accent"),
            "on-solid", List.of("solid"));
    /** What shows where something can be used, or how much: borders, rings, bars. */
    private static final Map<String, List<String>> SHAPES = Map.of(
            "edge", GROUNDS.subList(0, 6),
            "accent", GROUNDS.subList(0, 6),
            "solid", GROUNDS.subList(0, 6),
            "caution", List.of("sheet", "window", "band", "caution-wash"),
            "bar", List.of("bar-0", "sheet", "well"),
            "on-solid", List.of("solid"));

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void textCanBeRead(String theme) throws IOException {
        assertThat(weak(theme, TEXTS, OF_TEXT)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void bordersRingsAndBarsCanBeSeen(String theme) throws IOException {
        assertThat(weak(theme, SHAPES, OF_CONTROLS)).isEmpty();
    }

    /** What lies on the paper of a picture has colours of its own, for the paper stays paper. */
    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void whatLiesOnPaperCanBeRead(String theme) throws IOException {
        String paper = colours(theme).get("paper");
        for (String text : List.of("#4A4540", "#635E58", "#1D1B19")) {
            assertThat(contrast(text, paper)).as("%s on paper, %s", text, theme).isGreaterThanOrEqualTo(OF_TEXT);
        }
        assertThat(contrast("#7A2D5C", paper)).as("the joint in hand").isGreaterThanOrEqualTo(OF_CONTROLS);
    }

    /** A colour that a sheet of styles gives to a text stands among those above. */
    @Test
    void noTextHasAnotherColour() throws IOException {
        Set<String> used = new TreeSet<>();
        for (String sheet : SHEETS) {
            Matcher fill = Pattern.compile("-(?:text-fill|prompt-text-fill|fx-fill): ([^;]+);")
                    .matcher(Files.readString(LOOK.resolve(sheet + ".css")));
            while (fill.find()) {
                used.add(fill.group(1));
            }
        }
        Set<String> held = Stream.concat(
                        TEXTS.keySet().stream().map("-ds-"::concat), Stream.of("#4A4540", "#635E58", "#1D1B19"))
                .collect(Collectors.toSet());
        assertThat(held).containsAll(used);
    }

    /** Pale things are read too: nothing is paled by making it see-through. */
    @Test
    void noTextIsSeenThrough() throws IOException {
        for (String sheet : SHEETS) {
            assertThat(Files.readString(LOOK.resolve(sheet + ".css")))
                    .as(sheet)
                    .doesNotContainPattern("-fx-opacity: 0");
        }
    }

    private static List<String> weak(String theme, Map<String, List<String>> pairs, double least) throws IOException {
        Map<String, String> colours = colours(theme);
        return pairs.entrySet().stream()
                .flatMap(pair -> pair.getValue().stream()
                        .filter(ground -> contrast(colours.get(pair.getKey()), colours.get(ground)) < least)
                        .map(ground -> pair.getKey() + " on " + ground + ": "
                                + contrast(colours.get(pair.getKey()), colours.get(ground))))
                .toList();
    }

    private static Map<String, String> colours(String theme) throws IOException {
        Map<String, String> colours = new HashMap<>();
        Matcher colour = Pattern.compile("-ds-([a-z0-9-]+): (#[0-9A-F]{6});")
                .matcher(Files.readString(LOOK.resolve(theme + ".css")));
        while (colour.find()) {
            colours.put(colour.group(1), colour.group(2));
        }
        return colours;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 0xFF) + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
