package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Many pictures side by side on pages, each with its caption, for looking through a whole catalogue. */
public final class ContactSheet {
    private static final double MARGIN = 10;
    private static final double GAP = 5;
    private static final double CAPTION = 3.2;
    private static final double CAPTION_SPACE = 6;

    private final double pageWidth;
    private final double pageHeight;
    private final GlyphOutlines letters = GlyphOutlines.semibold();
    private final List<Drawing> pages = new ArrayList<>();
    private final List<DrawnPath> page = new ArrayList<>();
    private double x = MARGIN;
    private double y = MARGIN;
    private double rowHeight;

    private ContactSheet(double pageWidth, double pageHeight) {
        this.pageWidth = pageWidth;
        this.pageHeight = pageHeight;
    }

    /** Pictures that stay together in one row, for example the keyframes of a drill; what is wider than a page goes on below. */
    public record Entry(String caption, List<Drawing> pictures) {
        public Entry {
            pictures = List.copyOf(pictures);
        }
    }

    /** Lays entries out in reading order on as many pages as they need. Millimetres. */
    public static List<Drawing> pages(List<Entry> entries, double pageWidthMm, double pageHeightMm) {
        ContactSheet sheet = new ContactSheet(pageWidthMm, pageHeightMm);
        entries.forEach(sheet::add);
        sheet.endPage();
        return List.copyOf(sheet.pages);
    }

    private void add(Entry entry) {
        double width =
                entry.pictures.stream().mapToDouble(d -> d.widthMm() + GAP).sum() - GAP;
        if (width > pageWidth - 2 * MARGIN && entry.pictures.size() > 1) {
            int last = entry.pictures.size() - 1;
            add(new Entry(entry.caption, entry.pictures.subList(0, last)));
            add(new Entry(entry.caption, entry.pictures.subList(last, last + 1)));
            return;
        }
        double height =
                entry.pictures.stream().mapToDouble(Drawing::heightMm).max().orElse(0) + CAPTION_SPACE;
        GlyphOutlines.Text caption = letters.text(entry.caption, CAPTION);
        double taken = Math.max(width, caption.width());
        if (x > MARGIN && x + taken > pageWidth - MARGIN) {
            endRow();
        }
        if (y > MARGIN && y + height > pageHeight - MARGIN) {
            endPage();
        }
        page.add(DrawnPath.filled(DrawnPath.Role.LABEL, caption.shape().moved(x, y + CAPTION), Palette.INK));
        double at = x;
        for (Drawing picture : entry.pictures) {
            double left = at;
            double top = y + height - picture.heightMm();
            picture.paths().forEach(path -> page.add(path.moved(left, top)));
            at += picture.widthMm() + GAP;
        }
        x += taken + 2 * GAP;
        rowHeight = Math.max(rowHeight, height);
    }

    private void endRow() {
        x = MARGIN;
        y += rowHeight + GAP;
        rowHeight = 0;
    }

    private void endPage() {
        if (!page.isEmpty()) {
            pages.add(new Drawing(pageWidth, pageHeight, page, Map.of()));
            page.clear();
        }
        x = MARGIN;
        y = MARGIN;
        rowHeight = 0;
    }
}
