package org.drillsheaf.handout.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The fonts of the paper, read from the class path when a page first needs one. The small ones are kept; those of twenty
 * thousand signs are read again for the next document with such a name. Safe for several threads.
 */
final class FontFiles {
    /** Address of a font on the page setter's side to its place on the class path. */
    private static final Map<String, String> PLACES = Map.of(
            "res:font/source-sans-pro-400", "/fonts/ttf/SourceSansPro/SourceSansPro-Regular.ttf",
            "res:font/source-sans-pro-600", "/fonts/ttf/SourceSansPro/SourceSansPro-SemiBold.ttf",
            "res:font/source-sans-pro-700", "/fonts/ttf/SourceSansPro/SourceSansPro-Bold.ttf",
            "res:font/source-sans-pro-900", "/fonts/ttf/SourceSansPro/SourceSansPro-Black.ttf",
            "res:font/dejavu-sans-400", "/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf",
            "res:font/dejavu-sans-700", "/net/sf/jasperreports/fonts/dejavu/DejaVuSans-Bold.ttf",
            "res:font/noto-sans-sc-400", "/fonts/ttf/NotoSansSC/NotoSansSC-Regular.ttf",
            "res:font/noto-sans-sc-700", "/fonts/ttf/NotoSansSC/NotoSansSC-Bold.ttf");

    private static final int LARGEST_KEPT = 2_000_000;

    private final Map<String, byte[]> kept = new ConcurrentHashMap<>();
    private final Set<String> asked = ConcurrentHashMap.newKeySet();

    /** The font's bytes, not to be changed; empty when the address is none of ours. */
    Optional<byte[]> at(String address) {
        byte[] known = kept.get(address);
        if (known != null) {
            return Optional.of(known);
        }
        String place = PLACES.get(address);
        if (place == null) {
            return Optional.empty();
        }
        asked.add(address);
        byte[] font = read(place);
        if (font.length <= LARGEST_KEPT) {
            kept.put(address, font);
        }
        return Optional.of(font);
    }

    /** Whether the font at an address that was asked for is small enough to be kept in memory. */
    boolean keeps(String address) {
        return kept.containsKey(address);
    }

    /** Addresses of the fonts that some page has needed so far. */
    Set<String> asked() {
        return new TreeSet<>(asked);
    }

    private static byte[] read(String place) {
        try (InputStream font = FontFiles.class.getResourceAsStream(place)) {
            if (font == null) {
                throw new IllegalStateException("the font " + place + " is not on the class path");
            }
            return withoutSubstitution(font.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + place + " cannot be read", e);
        }
    }

    /**
     * Hides the table of glyph substitution. With it the page setter would join letters such as f and t into signs that have
     * no code, and a search could not find the word; without it kerning stays and every sign is a letter. Arabic is joined
     * before the page is set.
     */
    private static byte[] withoutSubstitution(byte[] font) {
        int tables = (font[4] & 255) << 8 | font[5] & 255;
        for (int entry = 12; entry < 12 + 16 * tables; entry += 16) {
            if (new String(font, entry, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                font[entry] = 'X';
            }
        }
        return font;
    }
}
