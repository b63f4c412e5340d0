package org.drillsheaf.handout.press;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.HouseStyle;
import org.drillsheaf.handout.page.Messages;
import org.drillsheaf.handout.paint.Signs;

/** Prints documents through templates. Safe for several threads. */
public final class Press {
    private final TemplateEngine templates;
    private final HouseStyle house;
    private final PageSetter setter = new PageSetter(new FontFiles());

    /** @param templates name of each template file to its text */
    public Press(Map<String, String> templates, HouseStyle house) {
        this.templates = new TemplateEngine(templates);
        this.house = house;
    }

    /**
     * Prints one document with the template {@code <kind>.ftlx}.
     *
     * @return the PDF, empty when {@code problems} got an error
     */
    public Optional<byte[]> print(Document document, Messages messages, Problems problems) {
        String template = document.kind().id() + ".ftlx";
        PictureShelf shelf = new PictureShelf();
        TemplateValues values = new TemplateValues(shelf);
        HouseStyle.Colours colours = house.colours();
        Signs signs = new Signs(colours.ink(), colours.accent(), colours.figureTint(), colours.grey());

        Map<String, Object> root = new LinkedHashMap<>(new PageMethods(messages, signs, shelf).byName());
        root.put("doc", values.of((Record) document));
        root.put("house", houseValues(values, messages));
        root.put("language", messages.language());
        root.put("rightToLeft", messages.rightToLeft());
        root.put(
                "paper",
                Map.of(
                        "name", document.frame().paper().name(),
                        "width", document.frame().paper().widthMillimetres(),
                        "height", document.frame().paper().heightMillimetres()));

        Instant created = document.frame().date().atTime(12, 0).toInstant(ZoneOffset.UTC);
        return templates.fill(template, root, problems).map(RightToLeft::shaped).flatMap(page -> setter.set(
                        template, page, shelf, created, problems)
                .map(raw -> PdfFinish.finish(raw, page, created)));
    }

    private Map<String, Object> houseValues(TemplateValues values, Messages messages) {
        Map<String, Object> map = values.of(house);
        map.put("todayContact", house.todayContact().best(java.util.List.of(messages.language())));
        house.scope().ifPresent(scope -> map.put("scope", scope.best(java.util.List.of(messages.language()))));
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
