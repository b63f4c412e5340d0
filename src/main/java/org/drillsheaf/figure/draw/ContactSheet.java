package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Many pictures side by side on pages, each with its caption, for looking through a whole catalogue. What stands in one row
 * stands on one level. Millimetres.
 */
public final class ContactSheet {
    private static final double MARGIN = 10;
    private static final double GAP = 5;
    private static final double BETWEEN_ENTRIES = 11;
    private static final double BETWEEN_ROWS = 7;
    private static final double TITLE = 3.2;
    private static final double NOTE = 2.5;
    private static final double BEFORE_NOTE = 2;
    private static final double CAPTION_SPACE = 6;
    private static final double FOOT_SPACE = 6;

    private final double width;
    private final double height;
    private final GlyphOutlines letters = GlyphOutlines.semibold();

    private ContactSheet(double pageWidth, double pageHeight) {
        this.width = pageWidth - 2 * MARGIN;
        this.height = pageHeight - 2 * MARGIN - FOOT_SPACE;
    }

    /**
     * Pictures that stay together, for example the keyframes of a drill; what is wider than a page goes on below.
     *
     * @param note smaller words after the title, or nothing
     */
    public record Entry(String title, String note, List<Drawing> pictures) {
        public Entry {
            pictures = List.copyOf(pictures);
        }
    }

    /** Lays entries out in reading order on as many pages as they need. */
    public static List<Drawing> pages(List<Entry> entries, double pageWidthMm, double pageHeightMm) {
        ContactSheet sheet = new ContactSheet(pageWidthMm, pageHeightMm);
        List<List<Row>> pages = sheet.pages(sheet.rows(entries));
        List<Drawing> drawn = new ArrayList<>();
        for (List<Row> page : pages) {
            List<DrawnPath> paths = sheet.paths(page);
            paths.addAll(sheet.foot(drawn.size() + 1, pages.size(), pageHeightMm));
            drawn.add(new Drawing(pageWidthMm, pageHeightMm, paths, Map.of()));
        }
        return drawn;
    }

    /** Paths with their floor at height 0, so that what stands beside each other can be set on one level. */
    private record Block(double width, double above, double below, List<DrawnPath> paths) {
        Block under(Block upper) {
            double up = upper.below + GAP + above;
            List<DrawnPath> both = new ArrayList<>(moved(upper.paths, 0, -up));
            both.addAll(paths);
            return new Block(Math.max(width, upper.width), upper.above + up, below, both);
        }
    }

    private record Titled(Block caption, Block pictures) {
        double width() {
            return Math.max(caption.width, pictures.width);
        }
    }

    private record Row(List<Titled> entries) {
        double above() {
            return entries.stream().mapToDouble(e -> e.pictures.above).max().orElse(0);
        }

        double height() {
            return CAPTION_SPACE
                    + above()
                    + entries.stream().mapToDouble(e -> e.pictures.below).max().orElse(0);
        }
    }

    private List<Row> rows(List<Entry> entries) {
        List<Row> rows = new ArrayList<>();
        List<Titled> row = new ArrayList<>();
        double taken = 0;
        for (Entry entry : entries) {
            Titled titled = new Titled(caption(entry), block(entry.pictures));
            if (!row.isEmpty() && taken + titled.width() > width) {
                rows.add(new Row(List.copyOf(row)));
                row.clear();
                taken = 0;
            }
            row.add(titled);
            taken += titled.width() + BETWEEN_ENTRIES;
        }
        if (!row.isEmpty()) {
            rows.add(new Row(List.copyOf(row)));
        }
        return rows;
    }

    private List<List<Row>> pages(List<Row> rows) {
        List<List<Row>> pages = new ArrayList<>();
        List<Row> page = new ArrayList<>();
        double taken = 0;
        for (Row row : rows) {
            if (!page.isEmpty() && taken + row.height() > height) {
                pages.add(List.copyOf(page));
                page.clear();
                taken = 0;
            }
            page.add(row);
            taken += row.height() + BETWEEN_ROWS;
        }
        if (!page.isEmpty()) {
            pages.add(List.copyOf(page));
        }
        return pages;
    }

    private Block caption(Entry entry) {
        GlyphOutlines.Text title = letters.text(entry.title, TITLE);
        List<DrawnPath> paths = new ArrayList<>();
        paths.add(DrawnPath.filled(DrawnPath.Role.LABEL, title.shape(), Palette.INK));
        double end = title.width();
        if (!entry.note.isEmpty()) {
            GlyphOutlines.Text note = letters.text(entry.note, NOTE);
            double left = end + BEFORE_NOTE;
            paths.add(DrawnPath.filled(DrawnPath.Role.LABEL, note.shape().moved(left, 0), Palette.PROP_INK));
            end = left + note.width();
        }
        return new Block(end, TITLE, 0, paths);
    }

    /** The pictures in one line, or in as many as the width of a page asks for. */
    private Block block(List<Drawing> pictures) {
        double taken = 0;
        int fit = 0;
        while (fit < pictures.size() && (fit == 0 || taken + pictures.get(fit).widthMm() <= width)) {
            taken += pictures.get(fit).widthMm() + GAP;
            fit++;
        }
        Block line = line(pictures.subList(0, fit));
        return fit == pictures.size()
                ? line
                : block(pictures.subList(fit, pictures.size())).under(line);
    }

    private static Block line(List<Drawing> pictures) {
        List<DrawnPath> paths = new ArrayList<>();
        double left = 0;
        double above = 0;
        double below = 0;
        for (Drawing picture : pictures) {
            double floor = floor(picture);
            paths.addAll(moved(picture.paths(), left, -floor));
            left += picture.widthMm() + GAP;
            above = Math.max(above, floor);
            below = Math.max(below, picture.heightMm() - floor);
        }
        return new Block(left - GAP, above, below, paths);
    }

    private static double floor(Drawing picture) {
        double floor = Optional.ofNullable(picture.anchors().get("floor"))
                .map(Box::top)
                .orElse(picture.heightMm());
        return Math.max(0, Math.min(picture.heightMm(), floor));
    }

    private List<DrawnPath> paths(List<Row> page) {
        List<DrawnPath> paths = new ArrayList<>();
        double top = MARGIN;
        for (Row row : page) {
            double left = MARGIN;
            for (Titled entry : row.entries) {
                double floor = top + CAPTION_SPACE + row.above();
                paths.addAll(moved(entry.caption.paths, left, floor - entry.pictures.above - CAPTION_SPACE + TITLE));
                paths.addAll(moved(entry.pictures.paths, left, floor));
                left += entry.width() + BETWEEN_ENTRIES;
            }
            top += row.height() + BETWEEN_ROWS;
        }
        return paths;
    }

    private List<DrawnPath> foot(int number, int of, double pageHeight) {
        GlyphOutlines.Text text = letters.text(number + " / " + of, NOTE);
        return moved(
                List.of(DrawnPath.filled(DrawnPath.Role.LABEL, text.shape(), Palette.PROP_INK)),
                MARGIN + width - text.width(),
                pageHeight - MARGIN);
    }

    private static List<DrawnPath> moved(List<DrawnPath> paths, double x, double y) {
        return paths.stream().map(path -> path.moved(x, y)).toList();
    }
}
