package org.drillsheaf.handout.press;

import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModelEx;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateModelIterator;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.drillsheaf.handout.page.Wording;
import org.drillsheaf.handout.paint.Picture;
import org.drillsheaf.handout.paint.Signs;
import org.drillsheaf.handout.paint.Strips;
import org.drillsheaf.saying.Messages;

/**
 * What a template may ask for:
 *
 * <ul>
 *   <li>{@code say('key', {'name': value})}: a fixed phrase as text;
 *   <li>{@code phrase('key', {…})}: the same with its bold parts apart, for the macro {@code <@words …/>};
 *   <li>{@code day(iso, 'date.long')}, {@code time(iso)}, {@code letter(0)};
 *   <li>{@code sign('stop', …numbers)}: a drawing that belongs to the page;
 *   <li>{@code lines('text', points, millimetres, bold)}: how many lines it takes; {@code width('text', points, bold)}: millimetres;
 *   <li>{@code speech('ar')}: all of these for another language, with its {@code language} and {@code rightToLeft}.
 * </ul>
 */
final class PageMethods {
    private final Messages messages;
    private final Function<String, Messages> languages;
    private final Signs signs;
    private final Strips strips;
    private final PictureShelf shelf;
    private final LineCount letters;
    private final TemplateValues values;

    /**
     * @param language of the page
     * @param languages phrases by language tag
     * @param letters of the fonts
     */
    PageMethods(
            String language, Function<String, Messages> languages, Signs signs, PictureShelf shelf, LineCount letters) {
        this.messages = languages.apply(language);
        this.languages = languages;
        this.signs = signs;
        this.strips = new Strips(signs.ink(), signs.accent(), signs.grey());
        this.shelf = shelf;
        this.letters = letters;
        this.values = new TemplateValues(shelf);
    }

    Map<String, Object> byName() {
        Map<String, Object> methods = new LinkedHashMap<>();
        methods.put("say", method(arguments -> TextFilter.clean(say(arguments).replace("*", ""))));
        methods.put("phrase", method(arguments -> values.of(Wording.marked(say(arguments)))));
        methods.put("day", method(a -> messages.day(LocalDate.parse(text(a, 0)), text(a, 1))));
        methods.put("time", method(a -> messages.time(LocalTime.parse(text(a, 0)))));
        methods.put("letter", method(a -> messages.letter((int) number(a, 0))));
        methods.put("sign", method(a -> shelf.keep(sign(a))));
        methods.put(
                "lines",
                method(a -> letters.lines(
                        text(a, 0), number(a, 1), number(a, 2), number(a, 3) > 0, messages.rightToLeft())));
        methods.put(
                "width",
                method(a -> letters.width(text(a, 0), number(a, 1), number(a, 2) > 0, messages.rightToLeft())));
        methods.put("speech", method(a -> speech(text(a, 0))));
        methods.put("language", messages.language());
        methods.put("rightToLeft", messages.rightToLeft());
        return methods;
    }

    /** The same methods for a part of the page in another language; without phrases it keeps its tag and speaks English. */
    private Map<String, Object> speech(String language) {
        Map<String, Object> methods = new PageMethods(language, languages, signs, shelf, letters).byName();
        methods.put("language", language);
        return methods;
    }

    private String say(List<?> arguments) throws TemplateModelException {
        Map<String, Object> given = new LinkedHashMap<>();
        if (arguments.size() > 1 && arguments.get(1) instanceof TemplateHashModelEx hash) {
            TemplateModelIterator keys = hash.keys().iterator();
            while (keys.hasNext()) {
                String key = ((TemplateScalarModel) keys.next()).getAsString();
                TemplateModel value = hash.get(key);
                given.put(
                        key,
                        value instanceof TemplateNumberModel number
                                ? number.getAsNumber()
                                : TextFilter.clean(((TemplateScalarModel) value).getAsString())
                                        .replace("*", "∗"));
            }
        }
        return messages.say(text(arguments, 0), given);
    }

    private Picture sign(List<?> a) throws TemplateModelException {
        boolean mirrored = messages.rightToLeft();
        return switch (text(a, 0)) {
            case "stop-on-ink" -> signs.stopOnInk(number(a, 1));
            case "stop-on-white" -> signs.stopOnWhite(number(a, 1));
            case "hazard" -> signs.hazardTile();
            case "feel" -> signs.feel(number(a, 1));
            case "not-feel" -> signs.notFeel(number(a, 1));
            case "coach-strip" -> strips.coach(number(a, 1), text(a, 2), number(a, 3), number(a, 4));
            case "strength" -> signs.strength((int) number(a, 1), number(a, 2));
            case "mark" -> strips.mark(text(a, 1), number(a, 2));
            case "verdict" -> strips.verdict(text(a, 1), number(a, 2));
            case "tick" -> signs.tick(number(a, 1));
            case "effort" -> signs.effort((int) number(a, 1), (int) number(a, 2), number(a, 3), mirrored);
            case "breath" -> signs.breath(number(a, 1), number(a, 2), number(a, 3), number(a, 4), mirrored);
            default -> throw new IllegalArgumentException("there is no sign “" + text(a, 0) + "”");
        };
    }

    private static String text(List<?> arguments, int index) throws TemplateModelException {
        if (index < arguments.size() && arguments.get(index) instanceof TemplateScalarModel text) {
            return text.getAsString();
        }
        throw new IllegalArgumentException("argument " + (index + 1) + " has to be a text");
    }

    private static double number(List<?> arguments, int index) throws TemplateModelException {
        if (index < arguments.size() && arguments.get(index) instanceof TemplateNumberModel number) {
            return number.getAsNumber().doubleValue();
        } else if (index < arguments.size() && arguments.get(index) instanceof TemplateBooleanModel yes) {
            return yes.getAsBoolean() ? 1 : 0;
        }
        throw new IllegalArgumentException("argument " + (index + 1) + " has to be a number");
    }

    private interface Call {
        Object on(List<?> arguments) throws TemplateModelException;
    }

    /** Lets a wrong argument fail as a fault of the template's line, not of the program. */
    private static TemplateMethodModelEx method(Call call) {
        return arguments -> {
            try {
                return call.on(arguments);
            } catch (IllegalArgumentException | java.time.DateTimeException e) {
                throw new TemplateModelException(e.getMessage(), e);
            }
        };
    }
}
