package org.drillsheaf.handout.press;

import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.apache.fop.apps.FOPException;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.io.InternalResourceResolver;
import org.apache.fop.area.AreaTreeHandler;
import org.apache.fop.fonts.EmbedFontInfo;
import org.apache.fop.fonts.Font;
import org.apache.fop.fonts.FontCollection;
import org.apache.fop.fonts.FontEventAdapter;
import org.apache.fop.fonts.FontInfo;
import org.apache.fop.fonts.FontTriplet;
import org.apache.fop.render.intermediate.IFContext;
import org.apache.fop.render.intermediate.IFDocumentHandler;
import org.apache.fop.render.intermediate.IFDocumentHandlerConfigurator;
import org.apache.fop.render.pdf.PDFDocumentHandler;
import org.apache.fop.render.pdf.PDFDocumentHandlerMaker;
import org.apache.fop.render.pdf.PDFRendererConfig.PDFRendererConfigParser;
import org.apache.fop.render.pdf.PDFRendererConfigurator;
import org.apache.xmlgraphics.util.MimeConstants;

/**
 * The fonts of one document. The page setter would read each file again for every document; here it gets what is kept, and only
 * when a page first asks for it.
 */
final class PageFonts extends FontInfo {
    private final KeptFonts kept;
    private final Map<String, Supplier<PageFont>> notYetAsked = new HashMap<>();

    private PageFonts(KeptFonts kept, FOUserAgent agent) {
        this.kept = kept;
        setEventListener(new FontEventAdapter(agent.getEventBroadcaster()));
    }

    /** Gives a document its fonts from those that are kept; the factory has been told by {@link #teach}. */
    static void into(FOUserAgent agent, KeptFonts kept, OutputStream pdf) throws FOPException {
        agent.setFOEventHandlerOverride(new AreaTreeHandler(agent, MimeConstants.MIME_PDF, pdf) {
            @Override
            protected void setupModel(FOUserAgent user, String format, OutputStream out) throws FOPException {
                fontInfo = new PageFonts(kept, user);
                super.setupModel(user, format, out);
            }
        });
    }

    /** Lets a factory's documents take their fonts from {@link PageFonts} instead of reading them. */
    static void teach(FopFactory factory) {
        factory.getRendererFactory().addDocumentHandlerMaker(new PDFDocumentHandlerMaker() {
            @Override
            public IFDocumentHandler makeIFDocumentHandler(IFContext context) {
                PDFDocumentHandler handler = new WithPageFonts(context);
                FOUserAgent agent = context.getUserAgent();
                agent.setStructureTreeEventHandler(handler.getStructureTreeEventHandler());
                return handler;
            }
        });
    }

    @Override
    public Font getFontInstance(FontTriplet triplet, int size) {
        String key = getInternalFontKey(triplet);
        Supplier<PageFont> font = notYetAsked.remove(key);
        if (font != null) {
            addMetrics(key, font.get());
        }
        return super.getFontInstance(triplet, size);
    }

    private int offer(int number, List<EmbedFontInfo> fonts, InternalResourceResolver resolver, boolean advanced) {
        int next = number;
        for (EmbedFontInfo font : fonts) {
            String key = "F" + next++;
            notYetAsked.put(key, () -> kept.forDocument(font, resolver, advanced));
            font.getFontTriplets().forEach(triplet -> addFontProperties(key, triplet));
        }
        return next;
    }

    private static final class WithPageFonts extends PDFDocumentHandler {
        WithPageFonts(IFContext context) {
            super(context);
        }

        @Override
        public IFDocumentHandlerConfigurator getConfigurator() {
            FOUserAgent agent = getUserAgent();
            return new PDFRendererConfigurator(agent, new PDFRendererConfigParser()) {
                @Override
                protected FontCollection createCollectionFromFontList(
                        InternalResourceResolver resolver, List<EmbedFontInfo> fonts) {
                    return (number, info) ->
                            ((PageFonts) info).offer(number, fonts, resolver, agent.isComplexScriptFeaturesEnabled());
                }
            };
        }
    }
}
