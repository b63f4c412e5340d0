package org.drillsheaf.handout.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.DrillBlock;

/**
 * Writes the words and pictures of the benchmark's handout as pages that an office suite can convert, to compare what that
 * costs. Simpler than ours: one column, no tags, no plates.
 */
public final class OfficePages {
    private OfficePages() {}

    /** @param arguments folder, and how many copies */
    public static void main(String[] arguments) throws IOException {
        PressBenchmark.Handout ready = new PressBenchmark.Handout();
        ready.prepare();
        ClientHandout handout = (ClientHandout) ready.document;
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        String page = page(handout, folder);
        for (int i = 1; i <= Integer.parseInt(arguments[1]); i++) {
            Files.writeString(folder.resolve("handout-" + i + ".html"), page);
        }
    }

    private static String page(ClientHandout handout, Path folder) throws IOException {
        StringBuilder html =
                new StringBuilder("<html><head><meta charset=\"utf-8\"><title>Handout</title></head><body>");
        html.append("<h1>").append(handout.frame().called()).append("</h1>");
        html.append("<p>").append(handout.purpose().text()).append("</p>");
        handout.cautions()
                .forEach(c -> html.append("<p>").append(c.text().text()).append("</p>"));
        html.append("<ul>");
        handout.setUp().forEach(t -> html.append("<li>").append(t.text()).append("</li>"));
        handout.whileTraining()
                .forEach(t -> html.append("<li>").append(t.text()).append("</li>"));
        html.append("</ul>");
        int pictures = 0;
        for (DrillBlock drill : handout.drills()) {
            html.append("<h2>")
                    .append(drill.number())
                    .append(' ')
                    .append(drill.name())
                    .append("</h2><p>");
            html.append(drill.purpose()).append("</p><table>");
            for (DrillBlock.Group group : drill.groups()) {
                String name = "picture-" + ++pictures + ".svg";
                Files.writeString(
                        folder.resolve(name), PlainPipeline.svg(group.figure().picture()));
                html.append("<tr><td><img src=\"").append(name).append("\"></td><td><ol>");
                group.steps()
                        .forEach(
                                s -> html.append("<li>").append(s.text().text()).append("</li>"));
                html.append("</ol></td></tr>");
            }
            html.append("</table>");
            for (List<String> list : List.of(drill.feel(), drill.notFeel(), drill.stop())) {
                html.append("<ul>");
                list.forEach(t -> html.append("<li>").append(t).append("</li>"));
                html.append("</ul>");
            }
        }
        return html.append("</body></html>").toString();
    }
}
