package org.drillsheaf.desk;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/** Writes a picture of few colours as a small PNG: its 256 most frequent colours, every other pixel as the nearest of them. */
final class SmallPng {
    private static final int COLOURS = 256;

    private SmallPng() {}

    static void write(int[] pixels, int width, int height, Path file) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int pixel : pixels) {
            counts.merge(pixel & 0xF8F8F8, 1, Integer::sum);
        }
        int[] palette = counts.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<Integer, Integer> e) -> -e.getValue())
                        .thenComparing(Map.Entry::getKey))
                .limit(COLOURS)
                .mapToInt(Map.Entry::getKey)
                .toArray();
        int[] exact = exact(pixels, palette);
        IndexColorModel model =
                new IndexColorModel(8, exact.length, exact, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
        Map<Integer, Integer> known = new HashMap<>();
        for (int i = 0; i < pixels.length; i++) {
            int index = known.computeIfAbsent(pixels[i] & 0xF8F8F8, colour -> nearest(colour, palette));
            picture.getRaster().setSample(i % width, i / width, 0, index);
        }
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The most frequent full colour of every entry, so that plain grounds keep their very colour. */
    private static int[] exact(int[] pixels, int[] palette) {
        Map<Integer, Map<Integer, Integer>> full = new HashMap<>();
        for (int pixel : pixels) {
            full.computeIfAbsent(pixel & 0xF8F8F8, c -> new HashMap<>()).merge(pixel & 0xFFFFFF, 1, Integer::sum);
        }
        return Arrays.stream(palette)
                .map(c -> full.get(c).entrySet().stream()
                        .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                        .orElseThrow()
                        .getKey())
                .toArray();
    }

    private static int nearest(int colour, int[] palette) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < palette.length; i++) {
            int red = (colour >> 16 & 255) - (palette[i] >> 16 & 255);
            int green = (colour >> 8 & 255) - (palette[i] >> 8 & 255);
            int blue = (colour & 255) - (palette[i] & 255);
            int distance = red * red + green * green + blue * blue;
            if (distance < least) {
                least = distance;
                best = i;
            }
        }
        return best;
    }
}
