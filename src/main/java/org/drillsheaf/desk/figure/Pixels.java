package org.drillsheaf.desk.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingPainter;

/** Turns drawings and painted pages into pictures of the window, off its thread. */
public final class Pixels {
    private Pixels() {}

    /** The drawing as large as fits into so many pixels, in their middle, on a clear ground. */
    public static Image of(Drawing drawing, int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = picture.createGraphics();
        g.setBackground(new Color(0, 0, 0, 0));
        double scale = Math.min(width / drawing.widthMm(), height / drawing.heightMm());
        g.translate((width - scale * drawing.widthMm()) / 2, (height - scale * drawing.heightMm()) / 2);
        DrawingPainter.paint(drawing, g, scale);
        g.dispose();
        return of(picture);
    }

    /**
     * The same pixels, not copied.
     *
     * @param picture of the type {@link BufferedImage#TYPE_INT_ARGB_PRE}
     */
    public static Image of(BufferedImage picture) {
        if (picture.getType() != BufferedImage.TYPE_INT_ARGB_PRE) {
            throw new IllegalArgumentException("the picture must have premultiplied colours");
        }
        int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        return new WritableImage(new PixelBuffer<>(
                picture.getWidth(), picture.getHeight(), IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance()));
    }
}
