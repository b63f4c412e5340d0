package org.drillsheaf.handout.press;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import javax.xml.transform.Source;
import org.apache.xmlgraphics.image.loader.Image;
import org.apache.xmlgraphics.image.loader.ImageContext;
import org.apache.xmlgraphics.image.loader.ImageException;
import org.apache.xmlgraphics.image.loader.ImageFlavor;
import org.apache.xmlgraphics.image.loader.ImageInfo;
import org.apache.xmlgraphics.image.loader.ImageManager;
import org.apache.xmlgraphics.image.loader.ImageSessionContext;
import org.apache.xmlgraphics.image.loader.ImageSize;
import org.apache.xmlgraphics.image.loader.impl.AbstractImageLoader;
import org.apache.xmlgraphics.image.loader.impl.ImageGraphics2D;
import org.apache.xmlgraphics.image.loader.spi.ImageImplRegistry;
import org.apache.xmlgraphics.image.loader.spi.ImageLoader;
import org.apache.xmlgraphics.image.loader.spi.ImageLoaderFactory;
import org.apache.xmlgraphics.image.loader.spi.ImagePreloader;
import org.apache.xmlgraphics.java2d.Graphics2DImagePainter;
import org.drillsheaf.handout.paint.Picture;

/**
 * Brings the pictures of one document onto its pages by painting. It is the only kind of image the page setter knows, so a
 * template can name neither a file nor an address nor a drawing language with scripts in it.
 */
final class PaintedImages implements ImagePreloader, ImageLoaderFactory {
    private static final String KIND = "image/x-drillsheaf-picture";
    private static final double MILLIPOINTS_PER_MM = 72_000 / 25.4;

    private final PictureShelf shelf;

    private PaintedImages(PictureShelf shelf) {
        this.shelf = shelf;
    }

    static ImageManager managerFor(PictureShelf shelf) {
        ImageImplRegistry registry = new ImageImplRegistry(false);
        PaintedImages images = new PaintedImages(shelf);
        registry.registerPreloader(images);
        registry.registerLoaderFactory(images);
        ImageContext resolution = () -> 72;
        return new ImageManager(registry, resolution) {
            /** Ours are answered at once: the library would open an empty file for each before it asks who can read it. */
            @Override
            public ImageInfo getImageInfo(String address, ImageSessionContext session)
                    throws ImageException, IOException {
                Optional<ImageInfo> ours = images.about(address);
                return ours.isPresent() ? ours.get() : super.getImageInfo(address, session);
            }
        };
    }

    private Optional<ImageInfo> about(String address) {
        return shelf.at(address).map(picture -> about(address, picture));
    }

    @Override
    public int getPriority() {
        return 1;
    }

    @Override
    @SuppressWarnings("NullAway") // this library tells "not mine" by null
    public ImageInfo preloadImage(String address, Source source, ImageContext context) {
        return null;
    }

    @SuppressWarnings("unchecked") // a raw map
    private ImageInfo about(String address, Picture picture) {
        ImageInfo info = new ImageInfo(address, KIND);
        ImageSize size = new ImageSize();
        size.setSizeInMillipoints((int) Math.round(picture.widthMm() * MILLIPOINTS_PER_MM), (int)
                Math.round(picture.heightMm() * MILLIPOINTS_PER_MM));
        size.setResolution(72);
        size.calcPixelsFromSize();
        info.setSize(size);
        info.getCustomObjects().put(ImageInfo.ORIGINAL_IMAGE, new PaintedImage(info, new OnPage(picture, size)));
        return info;
    }

    @Override
    public String[] getSupportedMIMETypes() {
        return new String[] {KIND};
    }

    @Override
    public ImageFlavor[] getSupportedFlavors(String kind) {
        return new ImageFlavor[] {ImageFlavor.GRAPHICS2D};
    }

    @Override
    public boolean isSupported(ImageInfo info) {
        return true;
    }

    @Override
    public ImageLoader newImageLoader(ImageFlavor flavour) {
        return new AbstractImageLoader() {
            @Override
            public Image loadImage(ImageInfo info, Map<String, Object> hints, ImageSessionContext session) {
                return info.getOriginalImage();
            }

            @Override
            public ImageFlavor getTargetFlavor() {
                return ImageFlavor.GRAPHICS2D;
            }
        };
    }

    @Override
    @SuppressWarnings("deprecation") // the interface still asks for it
    public int getUsagePenalty(String kind, ImageFlavor flavour) {
        return 0;
    }

    @Override
    public boolean isAvailable() {
        return true;
    }

    /** A cached image would hold the information that holds the image, and never come to an end. */
    static final class PaintedImage extends ImageGraphics2D {
        private final Picture picture;

        PaintedImage(ImageInfo info, OnPage painter) {
            super(info, painter);
            this.picture = painter.picture();
        }

        Picture picture() {
            return picture;
        }

        @Override
        public boolean isCacheable() {
            return false;
        }
    }

    private record OnPage(Picture picture, ImageSize size) implements Graphics2DImagePainter {
        @Override
        public Dimension getImageSize() {
            return size.getDimensionMpt();
        }

        @Override
        public void paint(Graphics2D page, Rectangle2D area) {
            Graphics2D surface = (Graphics2D) page.create();
            try {
                surface.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
                surface.translate(area.getX(), area.getY());
                surface.scale(area.getWidth() / picture.widthMm(), area.getHeight() / picture.heightMm());
                picture.painter().paint(surface);
            } finally {
                surface.dispose();
            }
        }
    }
}
