package org.drillsheaf.handout.press;

import java.awt.Dimension;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.sax.SAXResult;
import javax.xml.transform.stream.StreamSource;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.fop.apps.EnvironmentalProfileFactory;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.FopConfParser;
import org.apache.fop.apps.FopFactory;
import org.apache.xmlgraphics.util.MimeConstants;
import org.drillsheaf.handout.paint.Picture;
import org.xml.sax.SAXException;

/**
 * The way most programs would take, as a baseline: the same page description with its pictures written into it as SVG, handed
 * to the page setter by a transformer. Same fonts, same tags, same archive profile; no last pass.
 */
final class PlainPipeline {
    private static final Pattern PICTURE = Pattern.compile(
            "<fo:external-graphic\\b([^>]*?)src=\"(?:url\\((?:'|&#39;|&apos;)?)?(res:picture/\\d+)(?:'|&#39;|&apos;)?\\)?\"([^>]*?)"
                    + "(?:/>|>\\s*</fo:external-graphic>)");

    private final FopFactory factory;

    PlainPipeline() {
        try (InputStream settings = PlainPipeline.class.getResourceAsStream("page-setter.xml")) {
            factory = new FopConfParser(
                            new ByteArrayInputStream(compressing(
                                    java.util.Objects.requireNonNull(settings).readAllBytes())),
                            EnvironmentalProfileFactory.createRestrictedIO(
                                    LockedResources.BASE, new LockedResources(new FontFiles())))
                    .getFopFactoryBuilder()
                    .build();
        } catch (IOException | SAXException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The library compresses by itself unless told otherwise; ours leaves that to the last pass. */
    private static byte[] compressing(byte[] settings) {
        String text = new String(settings, StandardCharsets.UTF_8);
        return text.replaceAll("(?s)<filterList>.*</filterList>", "").getBytes(StandardCharsets.UTF_8);
    }

    /** The page description with every picture written out in place. */
    static String withInlinePictures(Press.FilledPage page) {
        StringBuilder text = new StringBuilder();
        Matcher graphic = PICTURE.matcher(page.text());
        int pictures = 0;
        while (graphic.find()) {
            Picture picture = page.pictures().at(graphic.group(2)).orElseThrow();
            graphic.appendReplacement(
                    text,
                    Matcher.quoteReplacement("<fo:instream-foreign-object" + graphic.group(1) + graphic.group(3) + ">"
                            + svg(picture) + "</fo:instream-foreign-object>"));
            pictures++;
        }
        graphic.appendTail(text);
        if (pictures == 0 || text.indexOf("res:picture/") >= 0) {
            throw new IllegalStateException("not every picture was written into the page: " + pictures);
        }
        return text.toString();
    }

    static String svg(Picture picture) {
        try {
            var document =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation();
            SVGGraphics2D surface =
                    new SVGGraphics2D(document.createDocument("http://www.w3.org/2000/svg", "svg", null));
            surface.setSVGCanvasSize(
                    new Dimension((int) Math.ceil(picture.widthMm()), (int) Math.ceil(picture.heightMm())));
            picture.painter().paint(surface);
            StringWriter out = new StringWriter();
            surface.stream(out, true);
            String written = out.toString();
            String size = "width=\"" + picture.widthMm() + "mm\" height=\"" + picture.heightMm() + "mm\" viewBox=\"0 0 "
                    + picture.widthMm() + " " + picture.heightMm() + "\" ";
            return written.substring(written.indexOf("<svg"))
                    .replaceFirst(" width=\"[^\"]*\"", "")
                    .replaceFirst(" height=\"[^\"]*\"", "")
                    .replaceFirst("<svg ", Matcher.quoteReplacement("<svg " + size));
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    byte[] print(String page) {
        try {
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            FOUserAgent agent = factory.newFOUserAgent();
            TransformerFactory.newInstance()
                    .newTransformer()
                    .transform(
                            new StreamSource(new StringReader(page)),
                            new SAXResult(factory.newFop(MimeConstants.MIME_PDF, agent, pdf)
                                    .getDefaultHandler()));
            return pdf.toByteArray();
        } catch (SAXException | TransformerException e) {
            throw new IllegalStateException(e);
        }
    }
}
