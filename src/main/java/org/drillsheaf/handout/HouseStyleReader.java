package org.drillsheaf.handout;

import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.handout.page.HouseStyle;
import org.drillsheaf.handout.paint.Picture;

/**
 * Reads a clinic's house style. The shape is checked by {@code shared/schemas/house.schema.json} before; here the colours are
 * held to the contrast that tired eyes need.
 */
public final class HouseStyleReader {
    private static final int WHITE = 0xFFFFFF;
    /** WCAG 2.2, success criteria 1.4.3 and 1.4.6. */
    private static final double LEAST_FOR_TEXT = 4.5;

    private static final double LEAST_FOR_BODY = 7;

    private HouseStyleReader() {}

    /**
     * The house style, empty when {@code problems} got an error.
     *
     * @param logo already read
     */
    public static Optional<HouseStyle> read(YamlNode file, Optional<Picture> logo, Problems problems) {
        Problems found = new Problems();
        HouseStyle.Colours usual = HouseStyle.Colours.DEFAULT;
        HouseStyle.Colours colours = file.get("colours")
                .map(node -> new HouseStyle.Colours(
                        colour(node, "ink", usual.ink(), found),
                        colour(node, "accent", usual.accent(), found),
                        colour(node, "tint", usual.tint(), found),
                        colour(node, "figure-tint", usual.figureTint(), found),
                        colour(node, "grey", usual.grey(), found)))
                .orElse(usual);
        contrast(file, "ink", colours.ink(), "white", WHITE, LEAST_FOR_BODY, found);
        contrast(file, "ink", colours.ink(), "tint", colours.tint(), LEAST_FOR_BODY, found);
        contrast(file, "ink", colours.ink(), "figure-tint", colours.figureTint(), LEAST_FOR_TEXT, found);
        contrast(file, "accent", colours.accent(), "white", WHITE, LEAST_FOR_TEXT, found);
        contrast(file, "accent", colours.accent(), "tint", colours.tint(), LEAST_FOR_TEXT, found);
        contrast(file, "grey", colours.grey(), "white", WHITE, LEAST_FOR_TEXT, found);
        HouseStyle style = new HouseStyle(
                needed(file, "name", found),
                needed(file, "phone", found),
                file.text("address"),
                needed(file, "emergency-number", found),
                file.localText("call-today").orElse(LocalText.english("your own doctor")),
                file.localText("scope"),
                logo,
                colours);
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(style);
    }

    private static String needed(YamlNode file, String key, Problems problems) {
        Optional<String> text = file.text(key).filter(t -> !t.isBlank());
        if (text.isEmpty()) {
            file.error(problems, "“" + key + "” is missing", "Add a line “" + key + ": …”");
        }
        return text.orElse("");
    }

    private static int colour(YamlNode node, String key, int usual, Problems problems) {
        Optional<YamlNode> given = node.get(key);
        if (given.isEmpty()) {
            return usual;
        }
        String text = given.get().text().orElse("");
        if (!text.matches("#[0-9A-Fa-f]{6}")) {
            given.get().error(problems, "“" + key + "” is no colour", "Write it like \"#1A1A1A\", with the quotes");
            return usual;
        }
        return Integer.parseInt(text.substring(1), 16);
    }

    private static void contrast(
            YamlNode file, String front, int colour, String back, int ground, double least, Problems problems) {
        double ratio = HouseStyle.contrast(colour, ground);
        if (ratio < least) {
            file.get("colours")
                    .flatMap(c -> c.get(front).or(() -> c.get(back)))
                    .orElse(file)
                    .error(
                            problems,
                            String.format(
                                    java.util.Locale.ROOT,
                                    "“%s” on %s has a contrast of %.1f; eyes need %.1f",
                                    front,
                                    back,
                                    ratio,
                                    least),
                            "Take a darker “" + front + "” or a lighter ground");
        }
    }
}
