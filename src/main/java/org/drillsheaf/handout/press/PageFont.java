package org.drillsheaf.handout.press;

import java.awt.Rectangle;
import java.net.URI;
import org.apache.fop.apps.io.InternalResourceResolver;
import org.apache.fop.fonts.EmbeddingMode;
import org.apache.fop.fonts.MultiByteFont;

/**
 * A font for one document: what was read from its file is shared with the documents before and after, which signs are used is
 * this document's own.
 */
final class PageFont extends MultiByteFont {
    private final Read read;

    /**
     * A font as it lies in its file.
     *
     * @param font maps no sign for a document, and is not embedded
     * @param widths of all its glyphs, not to be changed
     */
    record Read(MultiByteFont font, int[] widths) {
        /** @param font takes no part in any document from now on */
        static Read of(MultiByteFont font) {
            // Asked for a glyph it then answers by its number in the file, not in a document.
            font.setEmbedURI(null);
            return new Read(font, font.getWidths());
        }
    }

    /** @param file what is embedded */
    PageFont(Read read, URI file, InternalResourceResolver files) {
        super(files, EmbeddingMode.SUBSET);
        this.read = read;
        MultiByteFont font = read.font();
        setFontURI(font.getFontURI());
        setEmbedURI(file);
        setTTCName(font.getTTCName());
        setFontName(font.getFontName());
        setFullName(font.getFullName());
        setFamilyNames(font.getFamilyNames());
        setFontSubFamilyName(font.getFontSubName());
        setIsOTFFile(font.isOTFFile());
        setCIDType(font.getCIDType());
        setSimulateStyle(font.getSimulateStyle());
        setCapHeight(font.getCapHeight());
        setXHeight(font.getXHeight(1));
        setAscender(font.getAscender());
        setDescender(font.getDescender());
        setFontBBox(font.getFontBBox());
        setFlags(font.getFlags());
        setWeight(font.getWeight());
        setStemV(font.getStemV());
        setItalicAngle(font.getItalicAngle());
        setMissingWidth(font.getMissingWidth());
        setWidthArray(read.widths());
        setCMap(font.getCMap());
        replaceKerningMap(font.getKerningInfo());
        setGDEF(font.getGDEF());
        setGSUB(font.getGSUB());
        setGPOS(font.getGPOS());
    }

    @Override
    public Rectangle getBoundingBox(int glyph, int size) {
        return read.font().getBoundingBox(cidSet.getOriginalGlyphIndex(glyph), size);
    }

    @Override
    public int getUnderlinePosition(int size) {
        return read.font().getUnderlinePosition(size);
    }

    @Override
    public int getUnderlineThickness(int size) {
        return read.font().getUnderlineThickness(size);
    }

    @Override
    public int getStrikeoutPosition(int size) {
        return read.font().getStrikeoutPosition(size);
    }

    @Override
    public int getStrikeoutThickness(int size) {
        return read.font().getStrikeoutThickness(size);
    }
}
