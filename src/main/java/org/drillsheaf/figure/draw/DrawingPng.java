package org.drillsheaf.figure.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Writes a drawing as PNG on white paper. */
public final class DrawingPng {
    private DrawingPng() {}

    /** @param pixelsPerMm 11.8 is 300 dots an inch */
    public static byte[] write(Drawing drawing, double pixelsPerMm) {
        BufferedImage image = image(drawing, pixelsPerMm);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return bytes.toByteArray();
    }

    public static BufferedImage image(Drawing drawing, double pixelsPerMm) {
        int width = Math.max(1, (int) Math.ceil(drawing.widthMm() * pixelsPerMm));
        int height = Math.max(1, (int) Math.ceil(drawing.heightMm() * pixelsPerMm));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, width, height);
            DrawingPainter.paint(drawing, g, pixelsPerMm);
        } finally {
            g.dispose();
        }
        return image;
    }
}
