package org.drillsheaf.handout.press;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.apache.fop.events.Event;
import org.apache.fop.events.EventFormatter;
import org.apache.fop.events.EventListener;
import org.apache.fop.events.model.EventSeverity;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.xml.sax.Locator;

/**
 * Turns what the page setter only whispers into problems: a missing letter, font, picture, alternative text or language is an
 * error, since the page would look finished and be wrong; a text that sticks out of its place is a warning.
 */
final class PageEvents implements EventListener {
    private static final Set<String> SILENT_IN_THE_VALIDATOR = Set.of("altTextMissing", "unknownLanguage");
    private static final Set<String> STICKING_OUT =
            Set.of("lineOverflows", "regionOverflow", "viewportBPDOverflow", "viewportIPDOverflow", "objectTooWide");

    private final String template;
    private final String page;
    private final Problems problems;
    private final Set<String> seen = new LinkedHashSet<>();

    PageEvents(String template, String page, Problems problems) {
        this.template = template;
        this.page = page;
        this.problems = problems;
    }

    @Override
    public void processEvent(Event event) {
        String name = event.getEventID().substring(event.getEventID().lastIndexOf('.') + 1);
        boolean serious = event.getSeverity() != EventSeverity.INFO || SILENT_IN_THE_VALIDATOR.contains(name);
        if (!serious) {
            return;
        }
        String what = what(name, event);
        if (!seen.add(what)) {
            return;
        }
        problems.add(
                STICKING_OUT.contains(name)
                        ? Problem.warning(
                                template, 0, what, "Use shorter words, or give the place more room in the template")
                        : Problem.error(template, 0, what, remedy(name)));
    }

    private String what(String name, Event event) {
        return switch (name) {
            case "glyphNotAvailable" -> "No font of the page has the sign “" + sign(event) + "”" + around(sign(event));
            case "altTextMissing" -> "A picture or link has no alternative text" + line(event);
            case "unknownLanguage" -> "The language of the text is not given" + line(event);
            case "imageNotFound", "imageError", "imageIOError" ->
                "The template asks for a picture that is not one of ours" + line(event);
            case "fontSubstituted" -> "A font is asked for that is not there: " + oneLine(event) + line(event);
            default -> oneLine(event) + line(event);
        };
    }

    private static String remedy(String name) {
        return switch (name) {
            case "glyphNotAvailable" -> "Write it in other letters, or add a font that has it";
            case "altTextMissing" -> "Give fox:alt-text, or wrap decoration in role=\"artifact\"";
            case "unknownLanguage" -> "Set xml:lang on the root of the page";
            case "imageNotFound", "imageError", "imageIOError" ->
                "Print only pictures that the program hands to the template";
            default -> "Mend the template; nothing was printed";
        };
    }

    private static String oneLine(Event event) {
        String text = EventFormatter.format(event, Locale.ENGLISH).strip();
        String line = text.lines().findFirst().orElse(text);
        return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }

    /** The library cuts a sign outside the basic plane to its lower half, so the page is asked for the whole. */
    private String sign(Event event) {
        String told = String.valueOf(event.getParam("ch"));
        if (told.isEmpty() || page.contains(told)) {
            return told;
        }
        return page.codePoints()
                .filter(point -> point > 0xFFFF && (point & 0xFFFF) == told.charAt(0))
                .mapToObj(Character::toString)
                .findFirst()
                .orElse(told);
    }

    /** The words around a sign, so that somebody can find it in their own text. */
    private String around(String sign) {
        int at = page.indexOf(sign);
        if (at < 0) {
            return "";
        }
        int from = Math.max(page.lastIndexOf('>', at) + 1, at - 40);
        int to = page.indexOf('<', at);
        to = to < 0 ? page.length() : Math.min(to, at + 40);
        return " in “" + page.substring(from, to).strip() + "”";
    }

    /** What stands on the line of the page description that the event is about. */
    private String line(Event event) {
        if (!(event.getParam("loc") instanceof Locator locator) || locator.getLineNumber() < 1) {
            return "";
        }
        return page.lines()
                .skip(locator.getLineNumber() - 1L)
                .findFirst()
                .map(String::strip)
                .map(text -> " near “" + (text.length() > 90 ? text.substring(0, 90) + "…" : text) + "”")
                .orElse("");
    }
}
