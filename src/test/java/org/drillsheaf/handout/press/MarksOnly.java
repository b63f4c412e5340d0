package org.drillsheaf.handout.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDContentStream;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * The least that a PDF of the same look can cost: every letter and line of a printed document, already placed, written again
 * with embedded fonts. No template, no layout, no tags.
 */
final class MarksOnly {
    private sealed interface Mark {
        record Text(String font, float size, Object[] parts) implements Mark {}

        record Stroke(String operator, float[] numbers) implements Mark {}
    }

    private static final Map<String, String> FACES = Map.of(
            "SourceSansPro-Regular", "res:font/source-sans-pro-400",
            "SourceSansPro-SemiBold", "res:font/source-sans-pro-600",
            "SourceSansPro-Bold", "res:font/source-sans-pro-700",
            "SourceSansPro-Black", "res:font/source-sans-pro-900",
            "DejaVuSans", "res:font/dejavu-sans-400",
            "DejaVuSans-Bold", "res:font/dejavu-sans-700");

    private final List<PDRectangle> sizes = new ArrayList<>();
    private final List<List<Mark>> pages = new ArrayList<>();
    private final FontFiles fonts = new FontFiles();

    MarksOnly(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                Collector collector = new Collector();
                collector.processPage(page);
                sizes.add(page.getMediaBox());
                pages.add(collector.marks);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int marks() {
        return pages.stream().mapToInt(List::size).sum();
    }

    byte[] write() {
        try (PDDocument document = new PDDocument()) {
            Map<String, PDFont> loaded = new LinkedHashMap<>();
            for (int i = 0; i < pages.size(); i++) {
                PDPage page = new PDPage(sizes.get(i));
                document.addPage(page);
                try (PDPageContentStream surface = new PDPageContentStream(document, page)) {
                    for (Mark mark : pages.get(i)) {
                        put(mark, surface, document, loaded);
                    }
                }
            }
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            document.save(pdf);
            return pdf.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void put(Mark mark, PDPageContentStream surface, PDDocument document, Map<String, PDFont> loaded)
            throws IOException {
        if (mark instanceof Mark.Text text) {
            PDFont font = loaded.get(text.font());
            if (font == null) {
                byte[] face = fonts.at(Objects.requireNonNull(FACES.get(text.font()), text.font()))
                        .orElseThrow();
                try (InputStream bytes = new java.io.ByteArrayInputStream(face)) {
                    font = PDType0Font.load(document, bytes, true);
                }
                loaded.put(text.font(), font);
            }
            surface.setFont(font, text.size());
            surface.showTextWithPositioning(text.parts());
        } else if (mark instanceof Mark.Stroke stroke) {
            float[] n = stroke.numbers();
            switch (stroke.operator()) {
                case "q" -> surface.saveGraphicsState();
                case "Q" -> surface.restoreGraphicsState();
                case "cm" -> surface.transform(new Matrix(n[0], n[1], n[2], n[3], n[4], n[5]));
                case "m" -> surface.moveTo(n[0], n[1]);
                case "l" -> surface.lineTo(n[0], n[1]);
                case "c" -> surface.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
                case "h" -> surface.closePath();
                case "re" -> surface.addRect(n[0], n[1], n[2], n[3]);
                case "S" -> surface.stroke();
                case "f" -> surface.fill();
                case "f*" -> surface.fillEvenOdd();
                case "W" -> surface.clip();
                case "W*" -> surface.clipEvenOdd();
                case "w" -> surface.setLineWidth(n[0]);
                case "J" -> surface.setLineCapStyle((int) n[0]);
                case "j" -> surface.setLineJoinStyle((int) n[0]);
                case "M" -> surface.setMiterLimit(n[0]);
                case "rg" -> surface.setNonStrokingColor(n[0], n[1], n[2]);
                case "RG" -> surface.setStrokingColor(n[0], n[1], n[2]);
                case "g" -> surface.setNonStrokingColor(n[0]);
                case "G" -> surface.setStrokingColor(n[0]);
                case "d" -> surface.setLineDashPattern(java.util.Arrays.copyOf(n, n.length - 1), n[n.length - 1]);
                case "BT" -> surface.beginText();
                case "ET" -> surface.endText();
                case "Td" -> surface.newLineAtOffset(n[0], n[1]);
                case "Tm" -> surface.setTextMatrix(new Matrix(n[0], n[1], n[2], n[3], n[4], n[5]));
                case "Tc" -> surface.setCharacterSpacing(n[0]);
                case "Tw" -> surface.setWordSpacing(n[0]);
                default -> throw new IllegalStateException(stroke.operator());
            }
        }
    }

    /** Reads the marks of one page; drawings kept apart from the page are read in place. */
    private static final class Collector extends PDFStreamEngine {
        private final List<Mark> marks = new ArrayList<>();
        private PDFont font;
        private float size;

        @Override
        protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
            String name = operator.getName();
            switch (name) {
                case "BDC",
                        "BMC",
                        "EMC",
                        "MP",
                        "DP",
                        "gs",
                        "n",
                        "ri",
                        "i",
                        "cs",
                        "CS",
                        "sc",
                        "SC",
                        "scn",
                        "SCN",
                        "Tr" -> {}
                case "Tf" -> {
                    font = getResources().getFont((COSName) operands.get(0));
                    size = ((COSNumber) operands.get(1)).floatValue();
                }
                case "Tj" -> marks.add(text(List.of(operands.get(0))));
                case "TJ" -> {
                    List<COSBase> parts = new ArrayList<>();
                    ((COSArray) operands.get(0)).forEach(parts::add);
                    marks.add(text(parts));
                }
                case "Do" -> {
                    if (getResources().getXObject((COSName) operands.get(0)) instanceof PDFormXObject form) {
                        marks.add(new Mark.Stroke("q", new float[0]));
                        if (form.getMatrix() != null) {
                            float[] m = new float[6];
                            for (int i = 0; i < 6; i++) {
                                m[i] = form.getMatrix().getValue(i / 2, i % 2);
                            }
                            marks.add(new Mark.Stroke("cm", m));
                        }
                        nested(form);
                        marks.add(new Mark.Stroke("Q", new float[0]));
                    }
                }
                case "d" -> {
                    COSArray dashes = (COSArray) operands.get(0);
                    float[] n = new float[dashes.size() + 1];
                    for (int i = 0; i < dashes.size(); i++) {
                        n[i] = ((COSNumber) dashes.get(i)).floatValue();
                    }
                    n[dashes.size()] = ((COSNumber) operands.get(1)).floatValue();
                    marks.add(new Mark.Stroke(name, n));
                }
                default -> {
                    float[] n = new float[operands.size()];
                    for (int i = 0; i < n.length; i++) {
                        n[i] = ((COSNumber) operands.get(i)).floatValue();
                    }
                    marks.add(new Mark.Stroke(name, n));
                }
            }
        }

        private void nested(PDContentStream form) throws IOException {
            processChildStream(form, new PDPage(form.getBBox()));
        }

        private Mark text(List<COSBase> parts) throws IOException {
            List<Object> out = new ArrayList<>();
            for (COSBase part : parts) {
                if (part instanceof COSString string) {
                    StringBuilder letters = new StringBuilder();
                    try (InputStream codes = new java.io.ByteArrayInputStream(string.getBytes())) {
                        while (codes.available() > 0) {
                            String letter = font.toUnicode(font.readCode(codes));
                            letters.append(letter == null ? "" : letter);
                        }
                    }
                    out.add(letters.toString());
                } else {
                    out.add(((COSNumber) part).floatValue());
                }
            }
            return new Mark.Text(font.getName().replaceFirst("^[A-Z0-9]+\\+", ""), size, out.toArray());
        }
    }
}
