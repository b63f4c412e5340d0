package org.drillsheaf.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawnPath;
import org.drillsheaf.figure.draw.PathShape;

/** Writes drawings as the pages of a PDF, vectors only; the same drawings give the same bytes. */
final class DrawingPages {
    private static final float POINTS_PER_MM = (float) (72 / 25.4);
    private static final int ROUND = 1;

    private DrawingPages() {}

    static byte[] pdf(List<Drawing> pages) {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(0L);
            for (Drawing drawing : pages) {
                PDPage page = new PDPage(new PDRectangle(
                        (float) drawing.widthMm() * POINTS_PER_MM, (float) drawing.heightMm() * POINTS_PER_MM));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.transform(new org.apache.pdfbox.util.Matrix(
                            POINTS_PER_MM, 0, 0, -POINTS_PER_MM, 0, (float) drawing.heightMm() * POINTS_PER_MM));
                    content.setLineCapStyle(ROUND);
                    content.setLineJoinStyle(ROUND);
                    for (DrawnPath path : drawing.paths()) {
                        paint(path, content);
                    }
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
    }

    private static void paint(DrawnPath path, PDPageContentStream content) throws IOException {
        boolean see = path.fillOpacity() < 1;
        if (see) {
            content.saveGraphicsState();
            PDExtendedGraphicsState state = new PDExtendedGraphicsState(new COSDictionary());
            state.setNonStrokingAlphaConstant((float) path.fillOpacity());
            content.setGraphicsStateParameters(state);
        }
        if (path.fill() != DrawnPath.NONE) {
            content.setNonStrokingColor(red(path.fill()), green(path.fill()), blue(path.fill()));
            append(path.shape(), content);
            content.fillEvenOdd();
        }
        if (path.stroke() != DrawnPath.NONE) {
            content.setStrokingColor(red(path.stroke()), green(path.stroke()), blue(path.stroke()));
            content.setLineWidth((float) path.strokeWidth());
            append(path.shape(), content);
            content.stroke();
        }
        if (see) {
            content.restoreGraphicsState();
        }
    }

    private static float red(int rgb) {
        return (rgb >> 16 & 0xFF) / 255f;
    }

    private static float green(int rgb) {
        return (rgb >> 8 & 0xFF) / 255f;
    }

    private static float blue(int rgb) {
        return (rgb & 0xFF) / 255f;
    }

    private static void append(PathShape shape, PDPageContentStream content) {
        shape.visit(new PathShape.Visitor() {
            @Override
            public void moveTo(double x, double y) {
                written(() -> content.moveTo((float) x, (float) y));
            }

            @Override
            public void lineTo(double x, double y) {
                written(() -> content.lineTo((float) x, (float) y));
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                written(() -> content.curveTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x, (float) y));
            }

            @Override
            public void close() {
                written(content::closePath);
            }
        });
    }

    private interface Writing {
        void write() throws IOException;
    }

    private static void written(Writing writing) {
        try {
            writing.write();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
    }
}
