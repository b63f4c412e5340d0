package org.drillsheaf.handout.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.HashMap;
import java.util.Map;
import org.apache.fop.apps.io.InternalResourceResolver;
import org.apache.fop.fonts.EmbedFontInfo;
import org.apache.fop.fonts.EmbeddingMode;
import org.apache.fop.fonts.EncodingMode;
import org.apache.fop.fonts.FontLoader;
import org.apache.fop.fonts.MultiByteFont;

/**
 * The fonts of the paper with all their tables, read when a page first needs one and kept for the documents after it; those of
 * twenty thousand signs are read again. For one document at a time: their tables remember what they were asked.
 */
final class KeptFonts {
    private final FontFiles files;
    private final Map<URI, PageFont.Read> kept = new HashMap<>();

    KeptFonts(FontFiles files) {
        this.files = files;
    }

    /**
     * A font in which no sign is used yet.
     *
     * @param advanced whether marks and pairs are placed by the font's own table
     */
    PageFont forDocument(EmbedFontInfo font, InternalResourceResolver resolver, boolean advanced) {
        URI file = font.getEmbedURI();
        PageFont.Read read = kept.get(file);
        if (read == null) {
            read = read(font, resolver, advanced);
            if (files.keeps(file.toString())) {
                kept.put(file, read);
            }
        }
        return new PageFont(read, file, resolver);
    }

    private static PageFont.Read read(EmbedFontInfo font, InternalResourceResolver resolver, boolean advanced) {
        try {
            return PageFont.Read.of((MultiByteFont) FontLoader.loadFont(
                    font.getFontUris(),
                    font.getSubFontName(),
                    true,
                    EmbeddingMode.SUBSET,
                    EncodingMode.CID,
                    font.getKerning(),
                    advanced,
                    resolver,
                    false,
                    false,
                    false));
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + font.getEmbedURI() + " cannot be read", e);
        }
    }
}
