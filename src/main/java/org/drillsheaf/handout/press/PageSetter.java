package org.drillsheaf.handout.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
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
import org.apache.fop.apps.EnvironmentalProfileFactory;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.FopConfParser;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.FopFactoryConfig;
import org.apache.xmlgraphics.image.loader.ImageManager;
import org.apache.xmlgraphics.util.MimeConstants;
import org.drillsheaf.Problems;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Sets a page description (XSL-FO) as a tagged PDF. Safe for several threads: each document gets a factory of its own, which
 * costs nothing measurable and keeps the pictures of two documents apart, and settings that no other uses meanwhile.
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
    /**
     * Settings that no document uses at the moment. Two documents never share one: a tree of settings is read lazily and is not
     * safe for two readers, and the second one misses fonts.
     */
    private final Queue<FopFactoryConfig> idle = new ConcurrentLinkedQueue<>();

    PageSetter(FontFiles fonts) {
        this.fonts = fonts;
        idle.add(settings(fonts));
    }

    @SuppressWarnings("deprecation") // the only way to a configuration whose image manager can be replaced
    static FopFactoryConfig settings(FontFiles fonts) {
        try (InputStream file = PageSetter.class.getResourceAsStream("page-setter.xml")) {
            if (file == null) {
                throw new IllegalStateException("page-setter.xml is missing beside " + PageSetter.class);
            }
            return new FopConfParser(
                            file,
                            EnvironmentalProfileFactory.createRestrictedIO(
                                    LockedResources.BASE, new LockedResources(fonts)))
                    .getFopFactoryBuilder()
                    .buildConfig();
        } catch (IOException | SAXException e) {
            throw new IllegalStateException("the settings of the page setter cannot be read", e);
        }
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
        FopFactoryConfig settings = Optional.ofNullable(idle.poll()).orElseGet(() -> settings(fonts));
        try {
            FopFactory factory = factory(settings, pictures);
            FOUserAgent agent = factory.newFOUserAgent();
            agent.setCreationDate(Date.from(created));
            agent.setProducer("Drillsheaf");
            agent.getEventBroadcaster().addEventListener(new PageEvents(template, page, found));
            Fop fop = factory.newFop(MimeConstants.MIME_PDF, agent, pdf);
            XMLReader reader = reader();
            reader.setContentHandler(fop.getDefaultHandler());
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
            idle.add(settings);
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

    static FopFactory factory(FopFactoryConfig settings, PictureShelf pictures) {
        return FopFactory.newInstance(withImages(settings, PaintedImages.managerFor(pictures)));
    }

    /** The library builds its own image manager with every reader on the class path; ours takes its place. */
    private static FopFactoryConfig withImages(FopFactoryConfig config, ImageManager images) {
        return (FopFactoryConfig) Proxy.newProxyInstance(
                FopFactoryConfig.class.getClassLoader(),
                new Class<?>[] {FopFactoryConfig.class},
                (proxy, method, arguments) -> {
                    if (method.getName().equals("getImageManager")) {
                        return images;
                    }
                    try {
                        return method.invoke(config, arguments);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
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
