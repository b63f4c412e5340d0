package org.drillsheaf.handout.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;

/**
 * The only way from the page setter to the world: our fonts from the class path. Everything else, be it a file, an address
 * or a path that climbs, is refused.
 */
final class LockedResources implements ResourceResolver {
    static final URI BASE = URI.create("http://handout.invalid/");

    /** Address of a font on the page setter's side to its place on the class path. */
    private static final Map<String, String> FONTS = Map.of(
            "res:font/source-sans-pro-400", "/fonts/ttf/SourceSansPro/SourceSansPro-Regular.ttf",
            "res:font/source-sans-pro-600", "/fonts/ttf/SourceSansPro/SourceSansPro-SemiBold.ttf",
            "res:font/source-sans-pro-700", "/fonts/ttf/SourceSansPro/SourceSansPro-Bold.ttf",
            "res:font/source-sans-pro-900", "/fonts/ttf/SourceSansPro/SourceSansPro-Black.ttf",
            "res:font/dejavu-sans-400", "/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf",
            "res:font/dejavu-sans-700", "/net/sf/jasperreports/fonts/dejavu/DejaVuSans-Bold.ttf");

    @Override
    public Resource getResource(URI address) throws IOException {
        if (address.toString().startsWith(PictureShelf.ADDRESS)) {
            // The library opens a picture before it asks who can read it; ours has no bytes, it is painted.
            return new Resource(InputStream.nullInputStream());
        }
        String place = FONTS.get(address.toString());
        if (place == null) {
            throw new IOException("nothing is read from " + address);
        }
        InputStream font = LockedResources.class.getResourceAsStream(place);
        if (font == null) {
            throw new IOException("the font " + place + " is not on the class path");
        }
        try (font) {
            return new Resource(new ByteArrayInputStream(withoutSubstitution(font.readAllBytes())));
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

    @Override
    public OutputStream getOutputStream(URI address) throws IOException {
        throw new IOException("nothing is written to " + address);
    }
}
