package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** What tests want to know about a PDF: the reference validator's word, its structure tree, its text. */
final class PdfProof {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfProof() {}

    static void assertValid(byte[] pdf) {
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

    static int pages(byte[] pdf) {
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
