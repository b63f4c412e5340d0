package org.drillsheaf.handout.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import org.apache.fop.apps.EnvironmentalProfileFactory;
import org.apache.fop.apps.FOPException;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.FopConfParser;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.FopFactoryConfig;
import org.apache.xmlgraphics.image.loader.ImageManager;
import org.apache.xmlgraphics.util.MimeConstants;
import org.xml.sax.SAXException;

/**
 * All that the page setter needs and that outlasts a document: its settings and the fonts with their tables. For one document
 * at a time: settings are read lazily, tables of fonts remember what they were asked, and neither is safe for two readers.
 */
final class Workbench {
    private final KeptFonts fonts;
    private final FopFactory factory;
    private ImageManager images = PaintedImages.managerFor(new PictureShelf());

    /** @param ink what has been put down before, shared by all benches */
    Workbench(FontFiles files, InkMemory ink) {
        fonts = new KeptFonts(files);
        factory = FopFactory.newInstance(withOurImages(settings(files)));
        PageFonts.teach(factory);
        factory.getImageHandlerRegistry().addHandler(new RememberedInk(ink));
    }

    /** @param pictures all that the next document may show */
    FOUserAgent agentFor(PictureShelf pictures) {
        images = PaintedImages.managerFor(pictures);
        return factory.newFOUserAgent();
    }

    Fop toPdf(FOUserAgent agent, OutputStream pdf) throws FOPException {
        PageFonts.into(agent, fonts, pdf);
        return factory.newFop(MimeConstants.MIME_PDF, agent, pdf);
    }

    /** Lets go of the last document's pictures. */
    void clear() {
        images = PaintedImages.managerFor(new PictureShelf());
    }

    @SuppressWarnings("deprecation") // the only way to a configuration whose image manager can be replaced
    private static FopFactoryConfig settings(FontFiles fonts) {
        try (InputStream file = Workbench.class.getResourceAsStream("page-setter.xml")) {
            if (file == null) {
                throw new IllegalStateException("page-setter.xml is missing beside " + Workbench.class);
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

    /** The library builds its own image manager with every reader on the class path; ours takes its place. */
    private FopFactoryConfig withOurImages(FopFactoryConfig config) {
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
}
