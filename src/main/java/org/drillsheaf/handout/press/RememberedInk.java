package org.drillsheaf.handout.press;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Optional;
import org.apache.fop.render.RenderingContext;
import org.apache.fop.render.pdf.PDFContentGenerator;
import org.apache.fop.render.pdf.PDFImageHandlerGraphics2D;
import org.apache.fop.render.pdf.PDFRenderingContext;
import org.apache.fop.svg.PDFGraphics2D;
import org.apache.xmlgraphics.image.loader.Image;
import org.apache.xmlgraphics.image.loader.impl.ImageGraphics2D;
import org.apache.xmlgraphics.java2d.Graphics2DImagePainter;
import org.drillsheaf.handout.paint.Picture;

/** Puts pictures onto a page, those that came before without painting them again. The page gets the same bytes. */
final class RememberedInk extends PDFImageHandlerGraphics2D {
    private final InkMemory memory;

    RememberedInk(InkMemory memory) {
        this.memory = memory;
    }

    /** Before the library's own, which paints each time. */
    @Override
    public int getPriority() {
        return super.getPriority() - 1;
    }

    @Override
    public void handleImage(RenderingContext context, Image image, Rectangle place) throws IOException {
        PaintedImages.PaintedImage painted = (PaintedImages.PaintedImage) image;
        PDFContentGenerator page = ((PDFRenderingContext) context).getGenerator();
        super.handleImage(
                context,
                new ImageGraphics2D(
                        image.getInfo(),
                        new Once(painted.picture(), painted.getGraphics2DImagePainter(), page, memory)),
                place);
    }

    /** The library adds what was painted to the page when painting is done; what is remembered is added in its stead. */
    private record Once(Picture picture, Graphics2DImagePainter painter, PDFContentGenerator page, InkMemory memory)
            implements Graphics2DImagePainter {
        @Override
        public Dimension getImageSize() {
            return painter.getImageSize();
        }

        @Override
        public void paint(Graphics2D surface, Rectangle2D area) {
            if (!picture.painter().comesAgain()) {
                painter.paint(surface, area);
                return;
            }
            Optional<Ink> ink = memory.of(picture);
            if (ink.isPresent()) {
                ink.get().putOn(page);
            } else {
                Ink.Recorder recorder = new Ink.Recorder((PDFGraphics2D) surface);
                painter.paint(recorder, area);
                Ink.of(recorder).ifPresent(painted -> memory.keep(picture, painted));
            }
        }
    }
}
