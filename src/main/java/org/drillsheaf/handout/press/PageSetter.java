package org.drillsheaf.handout.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.util.Date;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.apache.fop.apps.FOUserAgent;
import org.drillsheaf.Problems;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Sets a page description (XSL-FO) as a tagged PDF. Safe for several threads: each document gets a {@link Workbench} that no other
 * uses meanwhile.
 */
final class PageSetter {
    /** Kept here because a logger that nobody holds forgets its level. */
    private static final Logger PAGE_SETTER_LOG = Logger.getLogger("org.apache.fop");

    private static final Logger FONT_TABLES_LOG = Logger.getLogger("org.apache.fop.complexscripts");

    static {
        PAGE_SETTER_LOG.setLevel(Level.SEVERE);
        FONT_TABLES_LOG.setLevel(Level.OFF);
    }

    private final FontFiles fonts;
    private final InkMemory ink = new InkMemory();
    /** What no document uses at the moment; there are never more than documents set at the same time. */
    private final Queue<Workbench> idle = new ConcurrentLinkedQueue<>();

    PageSetter(FontFiles fonts) {
        this.fonts = fonts;
        idle.add(new Workbench(fonts, ink));
    }

    /**
     * Sets one document.
     *
     * @param template name for messages
     * @return the PDF, empty when {@code problems} got an error
     */
    Optional<byte[]> set(String template, String page, PictureShelf pictures, Instant created, Problems problems) {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream(1 << 17);
        Problems found = new Problems();
        Workbench bench = Optional.ofNullable(idle.poll()).orElseGet(() -> new Workbench(fonts, ink));
        try {
            FOUserAgent agent = bench.agentFor(pictures);
            agent.setCreationDate(Date.from(created));
            agent.setProducer("Drillsheaf");
            agent.getEventBroadcaster().addEventListener(new PageEvents(template, page, found));
            XMLReader reader = reader();
            reader.setContentHandler(bench.toPdf(agent, pdf).getDefaultHandler());
            reader.parse(new InputSource(new StringReader(page)));
        } catch (SAXParseException e) {
            found.error(
                    template,
                    0,
                    "What the template wrote is not a page description (its line " + e.getLineNumber() + "): "
                            + sentence(String.valueOf(e.getMessage())),
                    "Mend the template; a document type and entities are not allowed");
        } catch (SAXException e) {
            told(found, template, e);
        } catch (RuntimeException e) {
            // The page setter reports some faults of a page only by failing.
            told(found, template, e);
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException("a page in memory cannot fail to be read", e);
        } finally {
            bench.clear();
            idle.add(bench);
        }
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(pdf.toByteArray());
    }

    private static void told(Problems found, String template, Exception e) {
        if (!found.hasErrors()) {
            found.error(
                    template,
                    0,
                    "The page cannot be set: " + sentence(String.valueOf(e.getMessage())),
                    "Mend the template; nothing was printed");
        }
    }

    private static String sentence(String message) {
        String line = message.lines().findFirst().orElse("").strip();
        return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }

    static XMLReader reader() throws ParserConfigurationException, SAXException {
        SAXParserFactory parsers = SAXParserFactory.newInstance();
        parsers.setNamespaceAware(true);
        parsers.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        parsers.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        XMLReader reader = parsers.newSAXParser().getXMLReader();
        reader.setErrorHandler(new DefaultHandler());
        return reader;
    }
}
