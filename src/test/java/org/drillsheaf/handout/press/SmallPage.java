package org.drillsheaf.handout.press;

/** The least page description that may be printed. */
final class SmallPage {
    private SmallPage() {}

    /** @param content of one block; text or elements */
    static String of(String content) {
        return "<fo:root xmlns:fo=\"http://www.w3.org/1999/XSL/Format\" xmlns:fox=\"http://xmlgraphics.apache.org/fop/extensions\""
                + " xml:lang=\"en\" font-family=\"Source Sans Pro, DejaVu Sans, Noto Sans SC\""
                + " font-selection-strategy=\"character-by-character\"><fo:layout-master-set>"
                + "<fo:simple-page-master master-name=\"p\" page-width=\"210mm\" page-height=\"297mm\"><fo:region-body/></fo:simple-page-master>"
                + "</fo:layout-master-set><fo:declarations><x:xmpmeta xmlns:x=\"adobe:ns:meta/\">"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description rdf:about=\"\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\"><dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">t</rdf:li></rdf:Alt>"
                + "</dc:title></rdf:Description></rdf:RDF></x:xmpmeta></fo:declarations><fo:page-sequence master-reference=\"p\">"
                + "<fo:flow flow-name=\"xsl-region-body\"><fo:block>" + content
                + "</fo:block></fo:flow></fo:page-sequence></fo:root>";
    }
}
