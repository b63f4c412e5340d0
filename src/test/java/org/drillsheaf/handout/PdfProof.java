package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.apache.pdfbox.text.TextPosition;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** What tests want to know about a PDF: the reference validator's word, its structure tree, its text. */
public final class PdfProof {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfProof() {}

    public static void assertValid(byte[] pdf) {
        assertThat(failures(pdf, PDFAFlavour.PDFUA_1)).as("PDF/UA-1").isEmpty();
        assertThat(failures(pdf, PDFAFlavour.PDFA_2_A)).as("PDF/A-2a").isEmpty();
    }

    static Set<String> failures(byte[] pdf, PDFAFlavour flavour) {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour)) {
            PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false);
            ValidationResult result = validator.validate(parser);
            Set<String> failures = new TreeSet<>();
            for (TestAssertion assertion : result.getTestAssertions()) {
                if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                    failures.add(assertion.getRuleId().getClause() + "-"
                            + assertion.getRuleId().getTestNumber() + " " + assertion.getMessage() + " "
                            + assertion.getLocation().getContext());
                }
            }
            if (!result.isCompliant() && failures.isEmpty()) {
                failures.add("not compliant, and no rule named");
            }
            return failures;
        } catch (Exception e) {
            throw new AssertionError("the validator cannot read the file", e);
        }
    }

    static String text(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    public static String text(byte[] pdf, int page) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(document).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The words in the left or the right half of a page. */
    static String half(byte[] pdf, int page, boolean left) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDPage sheet = document.getPage(page - 1);
            int wide = (int) sheet.getMediaBox().getWidth() / 2;
            PDFTextStripperByArea stripper = new PDFTextStripperByArea();
            stripper.addRegion("half", new Rectangle(left ? 0 : wide, 0, wide, (int)
                    sheet.getMediaBox().getHeight()));
            stripper.extractRegions(sheet);
            return stripper.getTextForRegion("half").replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Where a letter stands the first time on page 1, from the left edge; points. */
    static double fromLeft(byte[] pdf, String letter) {
        List<Float> places = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition drawn) {
                    if (drawn.getUnicode().equals(letter)) {
                        places.add(drawn.getX());
                    }
                }
            };
            stripper.setEndPage(1);
            stripper.getText(document);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return places.get(0);
    }

    static int pageOf(byte[] pdf, String words) {
        for (int page = 1; page <= pages(pdf); page++) {
            if (text(pdf, page).contains(words)) {
                return page;
            }
        }
        throw new AssertionError("no page has “" + words + "”");
    }

    /** Width and height of each page in millimetres, to a tenth. */
    static List<List<Double>> pageSizes(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<Double>> sizes = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                sizes.add(List.of(
                        Math.round(page.getMediaBox().getWidth() * 254 / 72) / 10.0,
                        Math.round(page.getMediaBox().getHeight() * 254 / 72) / 10.0));
            }
            return sizes;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Names of all fonts; one that is not embedded fails here. */
    static Set<String> fonts(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Set<String> names = new TreeSet<>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    names.add(font.getName());
                }
            }
            return names;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** For each sign of a text, the fonts that draw it with ink; a sign that stands on no page has none. */
    static Map<String, Set<String>> drawnWith(byte[] pdf, String text) {
        Map<String, Set<String>> fonts = new TreeMap<>();
        text.codePoints()
                .filter(point -> !Character.isWhitespace(point))
                .forEach(point -> fonts.put(Character.toString(point), new TreeSet<>()));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    Set<String> drawing = fonts.get(position.getUnicode());
                    if (drawing != null && hasInk(position)) {
                        drawing.add(position.getFont().getName());
                    }
                }
            }.getText(document);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return fonts;
    }

    private static boolean hasInk(TextPosition position) {
        try {
            int code = position.getCharacterCodes()[0];
            return position.getFont() instanceof PDType0Font font
                    && font.codeToGID(code) != 0
                    && !font.getPath(code).getBounds2D().isEmpty();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Text that belongs to an element of the structure tree, page by page; artifacts are left out. */
    public static String taggedText(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            StringBuilder text = new StringBuilder();
            for (PDPage page : document.getPages()) {
                PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                extractor.getMarkedContents().forEach(content -> append(content, text));
            }
            return text.toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static void append(PDMarkedContent content, StringBuilder text) {
        if ("Artifact".equals(content.getTag())) {
            return;
        }
        StringBuilder line = new StringBuilder();
        float baseline = Float.NaN;
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition position) {
                if (position.getY() != baseline) {
                    text.append(read(line.toString()));
                    line.setLength(0);
                    baseline = position.getY();
                }
                line.append(position.getUnicode());
            } else if (part instanceof PDMarkedContent inner) {
                text.append(read(line.toString()));
                line.setLength(0);
                append(inner, text);
            }
        }
        text.append(read(line.toString()));
    }

    /** Signs lie on a line in the order in which they are seen; from right to left they are read the other way round. */
    private static String read(String seen) {
        if (!Bidi.requiresBidi(seen.toCharArray(), 0, seen.length())) {
            return seen;
        }
        com.ibm.icu.text.Bidi line = new com.ibm.icu.text.Bidi();
        line.setInverse(true);
        line.setPara(seen, com.ibm.icu.text.Bidi.RTL, null);
        return Normalizer.normalize(line.writeReordered(com.ibm.icu.text.Bidi.DO_MIRRORING), Normalizer.Form.NFKC);
    }

    /** The lines of one section within the page's own, from 1. */
    static List<String> section(List<String> tree, int number) {
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < tree.size(); i++) {
            if (tree.get(i).strip().equals("Sect")) {
                starts.add(i);
            }
        }
        starts.add(tree.size());
        return tree.subList(starts.get(number), starts.get(number + 1));
    }

    public static int pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** One line for each element of the structure tree, indented by depth: type, and alternative text where there is one. */
    static List<String> structure(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> lines = new ArrayList<>();
            walk(document.getDocumentCatalog().getStructureTreeRoot(), "", lines);
            return lines;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Language tags of the whole document, then of every part that has its own, in reading order. */
    static List<String> languages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> tags =
                    new ArrayList<>(List.of(document.getDocumentCatalog().getLanguage()));
            tagged(document.getDocumentCatalog().getStructureTreeRoot(), tags);
            return tags;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static void tagged(PDStructureNode node, List<String> tags) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                if (element.getLanguage() != null) {
                    tags.add(element.getLanguage());
                }
                tagged(element, tags);
            }
        }
    }

    /** Millimetres from the left edge to the first sign that is drawn in at least this size. */
    static double placeOf(byte[] pdf, String sign, double points) {
        List<Double> places = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    if (position.getUnicode().equals(sign) && position.getFontSizeInPt() >= points) {
                        places.add(position.getXDirAdj() * 25.4 / 72);
                    }
                }
            }.getText(document);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        assertThat(places).as("“" + sign + "” in " + points + " points").isNotEmpty();
        return places.get(0);
    }

    private static void walk(PDStructureNode node, String indent, List<String> lines) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                String alternative = element.getAlternateDescription();
                lines.add(indent + element.getStructureType() + (alternative == null ? "" : " [" + alternative + "]"));
                walk(element, indent + " ", lines);
            }
        }
    }
}
