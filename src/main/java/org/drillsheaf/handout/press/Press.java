package org.drillsheaf.handout.press;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drillsheaf.Problems;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.HouseStyle;
import org.drillsheaf.handout.paint.Signs;
import org.drillsheaf.saying.Messages;

/** Prints documents through templates. Safe for several threads. */
public final class Press {
    private final TemplateEngine templates;
    private final HouseStyle house;
    private final FontFiles fonts = new FontFiles();
    private final PageSetter setter = new PageSetter(fonts);
    private final LineCount letters = new LineCount(fonts);

    /** @param templates name of each template file to its text */
    public Press(Map<String, String> templates, HouseStyle house) {
        this.templates = new TemplateEngine(templates);
        this.house = house;
    }

    /**
     * Prints one document with the template {@code <kind>.ftlx}.
     *
     * @param languages phrases by language tag, those of the document's own among them
     * @return the PDF, empty when {@code problems} got an error
     */
    public Optional<byte[]> print(Document document, Function<String, Messages> languages, Problems problems) {
        return fill(document, languages, problems).flatMap(page -> set(page, problems));
    }

    /** A page description and all that it names. */
    record FilledPage(String template, String text, PictureShelf pictures, Instant created) {}

    Optional<FilledPage> fill(Document document, Function<String, Messages> languages, Problems problems) {
        String template = document.kind().id() + ".ftlx";
        PictureShelf shelf = new PictureShelf();
        TemplateValues values = new TemplateValues(shelf);
        HouseStyle.Colours colours = house.colours();
        Signs signs = new Signs(colours.ink(), colours.accent(), colours.figureTint(), colours.grey());

        String language = languages.apply(document.frame().language()).language();
        Map<String, Object> root =
                new LinkedHashMap<>(new PageMethods(language, languages, signs, shelf, letters).byName());
        root.put("doc", values.of((Record) document));
        root.put("house", houseValues(values, languages.apply(language)));
        root.put(
                "paper",
                Map.of(
                        "name", document.frame().paper().name(),
                        "width", document.frame().paper().widthMillimetres(),
                        "height", document.frame().paper().heightMillimetres()));

        Instant created = document.frame().date().atTime(12, 0).toInstant(ZoneOffset.UTC);
        return templates
                .fill(template, root, problems)
                .map(RightToLeft::shaped)
                .map(text -> new FilledPage(template, text, shelf, created));
    }

    Optional<byte[]> set(FilledPage page, Problems problems) {
        return setter.set(page.template(), page.text(), page.pictures(), page.created(), problems)
                .map(raw -> PdfFinish.finish(raw, page.text(), page.created()));
    }

    private Map<String, Object> houseValues(TemplateValues values, Messages messages) {
        String language = messages.language();
        Map<String, Object> map = values.of(house);
        if (messages.rightToLeft()) {
            // A space would turn the groups of a telephone number round.
            map.put("phone", house.phone().replace(' ', '\u00a0'));
        }
        map.put("todayContact", house.todayContact().best(java.util.List.of(language)));
        house.scope().ifPresent(scope -> map.put("scope", scope.best(java.util.List.of(language))));
        HouseStyle.Colours colours = house.colours();
        map.put(
                "colours",
                Map.of(
                        "ink", css(colours.ink()),
                        "accent", css(colours.accent()),
                        "tint", css(colours.tint()),
                        "grey", css(colours.grey())));
        return map;
    }

    private static String css(int colour) {
        return String.format(java.util.Locale.ROOT, "#%06X", colour);
    }
}
