package org.drillsheaf.store.record;

import java.util.ArrayList;
import java.util.List;

/** The page that the archive is read from. Not safe for several threads. */
final class ArchivePage {
    private final String title;
    private final List<String> lines = new ArrayList<>();
    private boolean listing;

    ArchivePage(ClientRecord record) {
        title = record.part(PartKey.CLIENT)
                .flatMap(Part::content)
                .flatMap(c -> c.value("/name"))
                .orElse(record.id());
    }

    void section(String heading) {
        endList();
        lines.add("<h2>" + escape(heading) + "</h2>");
    }

    void link(String file, String words) {
        item("<a href=\"" + escape(file) + "\">" + escape(words) + "</a>");
    }

    void line(String words) {
        item(escape(words));
    }

    private void item(String html) {
        if (!listing) {
            lines.add("<ul>");
            listing = true;
        }
        lines.add("<li>" + html + "</li>");
    }

    private void endList() {
        if (listing) {
            lines.add("</ul>");
            listing = false;
        }
    }

    String html() {
        endList();
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head><meta charset=\"utf-8\"><title>" + escape(title)
                + "</title></head>\n<body>\n<h1>" + escape(title)
                + "</h1>\n<p>Everything that is kept about this client. Health data: keep it as you keep the record"
                + " itself.</p>\n" + String.join("\n", lines) + "\n</body>\n</html>\n";
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
