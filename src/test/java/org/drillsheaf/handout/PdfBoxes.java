package org.drillsheaf.handout;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * Where words and pictures stand on the pages, read back from the finished file: nothing may lie over anything else, and nothing
 * nearer to the edge than a printer reaches. Points, from the upper left corner.
 */
public final class PdfBoxes {
    /** Printers leave this much blank. */
    private static final double EDGE = 5 * 72 / 25.4;
    /** Letters of two lines may touch by this much: boxes are rounder than letters. */
    private static final double TOUCH = 1.2;

    private PdfBoxes() {}

    /** @param size of the type; 0 for a picture */
    private record Ink(String what, Rectangle2D box, double baseline, double size) {
        boolean lies(Ink other) {
            Rectangle2D both = box.createIntersection(other.box);
            return both.getWidth() > TOUCH && both.getHeight() > TOUCH;
        }

        boolean isPicture() {
            return size == 0;
        }
    }

    /** One sentence for each fault; empty when all is well. */
    public static List<String> faults(byte[] pdf) {
        List<String> faults = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDPage sheet = document.getPage(page - 1);
                List<Ink> ink = new ArrayList<>(words(document, page));
                ink.addAll(pictures(sheet));
                double wide = sheet.getMediaBox().getWidth();
                double high = sheet.getMediaBox().getHeight();
                Rectangle2D reach = new Rectangle2D.Double(EDGE, EDGE, wide - 2 * EDGE, high - 2 * EDGE);
                for (int i = 0; i < ink.size(); i++) {
                    Ink one = ink.get(i);
                    if (!reach.contains(one.box())) {
                        faults.add("page " + page + ": “" + one.what() + "” stands at the edge");
                    }
                    for (int j = i + 1; j < ink.size(); j++) {
                        if (one.lies(ink.get(j)) && !sameLine(one, ink.get(j))) {
                            faults.add("page " + page + ": “" + one.what() + "” lies over “"
                                    + ink.get(j).what() + "”");
                        }
                    }
                }
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return faults;
    }

    /** Parts of one word in two fonts or sizes. */
    private static boolean sameLine(Ink one, Ink other) {
        return !one.isPicture()
                && !other.isPicture()
                && Math.abs(one.baseline() - other.baseline()) < 0.5
                && one.box().createIntersection(other.box()).getWidth() < 0.35 * Math.min(one.size(), other.size());
    }

    /** How many words and pictures the pages hold. */
    public static int count(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int count = 0;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                count += words(document, page).size()
                        + pictures(document.getPage(page - 1)).size();
            }
            return count;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Ink> words(PDDocument document, int page) throws IOException {
        List<Ink> words = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
                if (at.getUnicode().isBlank()) {
                    return;
                }
                double size = at.getFontSizeInPt();
                // From the foot of the letters to the height of the capitals.
                Rectangle2D box = new Rectangle2D.Double(
                        at.getXDirAdj(), at.getYDirAdj() - 0.62 * size, at.getWidthDirAdj(), 0.62 * size);
                Ink last = words.isEmpty() ? null : words.get(words.size() - 1);
                boolean goesOn = last != null
                        && Math.abs(last.baseline() - at.getYDirAdj()) < 0.1
                        && last.size() == size
                        && box.getX() >= last.box().getX()
                        && Math.abs(box.getX() - last.box().getMaxX()) < 0.2 * size;
                if (goesOn) {
                    words.set(
                            words.size() - 1,
                            new Ink(last.what() + at.getUnicode(), last.box().createUnion(box), last.baseline(), size));
                } else {
                    words.add(new Ink(at.getUnicode(), box, at.getYDirAdj(), size));
                }
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return words;
    }

    private static List<Ink> pictures(PDPage page) throws IOException {
        Figures figures = new Figures(page);
        figures.processPage(page);
        return figures.found;
    }

    /** Collects the ink of everything that is tagged as a picture. */
    private static final class Figures extends PDFGraphicsStreamEngine {
        private final List<Ink> found = new ArrayList<>();
        private final double high;
        private GeneralPath path = new GeneralPath();
        private Rectangle2D current;
        private int inside;

        Figures(PDPage page) {
            super(page);
            high = page.getMediaBox().getHeight();
        }

        @Override
        public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
            if (inside > 0 || "Figure".equals(tag.getName())) {
                inside++;
            }
        }

        @Override
        public void endMarkedContentSequence() {
            if (inside > 0 && --inside == 0 && current != null) {
                found.add(new Ink("picture " + (found.size() + 1), current, 0, 0));
                current = null;
            }
        }

        private void ink() {
            if (inside > 0 && path.getCurrentPoint() != null) {
                Rectangle2D box = path.getBounds2D();
                Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
                Rectangle2D seen = box.createIntersection(clip);
                Rectangle2D turned = new Rectangle2D.Double(
                        seen.getX(),
                        high - seen.getMaxY(),
                        Math.max(0, seen.getWidth()),
                        Math.max(0, seen.getHeight()));
                current = current == null ? turned : current.createUnion(turned);
            }
            path = new GeneralPath();
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            moveTo((float) p0.getX(), (float) p0.getY());
            lineTo((float) p1.getX(), (float) p1.getY());
            lineTo((float) p2.getX(), (float) p2.getY());
            lineTo((float) p3.getX(), (float) p3.getY());
            closePath();
        }

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int windingRule) {
            getGraphicsState().intersectClippingPath(new GeneralPath(path));
        }

        @Override
        public void moveTo(float x, float y) {
            path.moveTo(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            path.lineTo(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return path.getCurrentPoint() == null ? new Point2D.Float() : path.getCurrentPoint();
        }

        @Override
        public void closePath() {
            if (path.getCurrentPoint() != null) {
                path.closePath();
            }
        }

        @Override
        public void endPath() {
            path = new GeneralPath();
        }

        @Override
        public void strokePath() {
            ink();
        }

        @Override
        public void fillPath(int windingRule) {
            ink();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            ink();
        }

        @Override
        public void shadingFill(COSName name) {}
    }
}
