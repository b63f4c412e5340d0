package org.drillsheaf.handout.paint;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.drillsheaf.Problems;

/** A logo of dots. Its size is read from its head before anything is unpacked. */
final class PngLogo {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};
    /** Enough for 30 mm at 1200 dots an inch. */
    private static final int MOST_DOTS = 1500;

    private static final int HEAD = 24;

    private PngLogo() {}

    static Optional<Picture> read(String file, byte[] content, Problems problems) {
        if (content.length < HEAD || !Arrays.equals(content, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length)) {
            problems.error(file, 0, "This is no PNG picture", "Save the logo as PNG again");
            return Optional.empty();
        }
        int wide = ByteBuffer.wrap(content).getInt(16);
        int high = ByteBuffer.wrap(content).getInt(20);
        if (wide < 1 || high < 1 || wide > MOST_DOTS || high > MOST_DOTS) {
            problems.error(
                    file,
                    0,
                    "The logo has " + Integer.toUnsignedString(wide) + " × " + Integer.toUnsignedString(high)
                            + " dots; at most " + MOST_DOTS + " each way are read",
                    "Make it smaller");
            return Optional.empty();
        }
        return dots(content, problems, file).map(dots -> new Picture(wide, high, surface -> paint(dots, surface)));
    }

    private static Optional<BufferedImage> dots(byte[] content, Problems problems, String file) {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (var stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
            reader.setInput(stream, true, true);
            return Optional.of(onWhite(reader.read(0)));
        } catch (IOException | RuntimeException e) { // the reader reports damage in both ways
            problems.error(file, 0, "The PNG picture is damaged", "Save the logo as PNG again");
            return Optional.empty();
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage onWhite(BufferedImage read) {
        BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = plain.createGraphics();
        surface.setColor(Color.WHITE);
        surface.fillRect(0, 0, plain.getWidth(), plain.getHeight());
        surface.drawImage(read, 0, 0, null);
        surface.dispose();
        return plain;
    }

    private static void paint(BufferedImage dots, Graphics2D surface) {
        surface.drawImage(dots, new AffineTransform(), null);
    }
}
