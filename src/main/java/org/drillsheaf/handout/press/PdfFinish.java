package org.drillsheaf.handout.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;

/**
 * The last pass over a PDF: the same input gives the same bytes on every machine and in every time zone, and what is copied or
 * searched is letters, not the joined forms that were printed.
 */
final class PdfFinish {
    private static final Pattern XMP_DATE =
            Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(?:Z|[+-]\\d\\d:\\d\\d)");
    private static final Pattern SINGLE = Pattern.compile("<(\\p{XDigit}+)>\\s*<(\\p{XDigit}+)>");
    private static final Pattern RANGE = Pattern.compile("<(\\p{XDigit}+)>\\s*<(\\p{XDigit}+)>\\s*<(\\p{XDigit}+)>");
    private static final Pattern BLOCK =
            Pattern.compile("\\d+\\s+beginbf(char|range)(.*?)endbf\\1\\s*", Pattern.DOTALL);
    /** More entries are not allowed in one block of a character map. */
    private static final int BLOCK_SIZE = 100;

    private PdfFinish() {}

    /** @param page the page description that was set, to know which of two signs with one glyph was meant */
    static byte[] finish(byte[] raw, String page, Instant created) {
        try (PDDocument document = Loader.loadPDF(raw)) {
            setDates(document, created);
            Twins twins = Twins.in(page);
            for (COSObject object : document.getDocument().getObjectsByType(COSName.FONT)) {
                if (object.getObject() instanceof COSDictionary font
                        && font.getDictionaryObject(COSName.TO_UNICODE) instanceof COSStream map) {
                    boolean ideographs =
                            font.getNameAsString(COSName.BASE_FONT, "").contains("NotoSansSC");
                    font.setItem(COSName.TO_UNICODE, cleaned(document, map, twins.within(ideographs)));
                }
            }
            document.getDocument().getTrailer().removeItem(COSName.ID);
            // Seeds the identifier, which the library would take from the clock.
            document.setDocumentId(java.util.Arrays.hashCode(raw.length < 4 ? raw : idSeed(document)) & 0xFFFFFFFFL);
            ByteArrayOutputStream pdf = new ByteArrayOutputStream(raw.length);
            document.save(pdf);
            return pdf.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF in memory cannot fail to be read", e);
        }
    }

    /** Text of all pages: two documents with the same words and the same drawings are one document. */
    private static byte[] idSeed(PDDocument document) throws IOException {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        for (var page : document.getPages()) {
            try (var stream = page.getContents()) {
                stream.transferTo(content);
            }
        }
        return content.toByteArray();
    }

    private static void setDates(PDDocument document, Instant created) throws IOException {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.setTimeInMillis(created.toEpochMilli());
        PDDocumentInformation information = document.getDocumentInformation();
        information.setCreationDate(date);
        information.setModificationDate(date);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
        String iso = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(created.atOffset(ZoneOffset.UTC));
        String fixed = XMP_DATE.matcher(xmp).replaceAll(iso);
        try (var out = metadata.createOutputStream()) {
            out.write(fixed.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static COSStream cleaned(PDDocument document, COSStream map, IntUnaryOperator meant) throws IOException {
        String text = new String(new PDStream(map).toByteArray(), StandardCharsets.ISO_8859_1);
        List<String> entries = new ArrayList<>();
        Matcher block = BLOCK.matcher(text);
        int first = -1;
        while (block.find()) {
            first = first < 0 ? block.start() : first;
            if (block.group(1).equals("char")) {
                Matcher one = SINGLE.matcher(block.group(2));
                while (one.find()) {
                    entries.add("<" + one.group(1) + "> <" + plain(one.group(2), 0, meant) + ">");
                }
            } else {
                Matcher range = RANGE.matcher(block.group(2));
                while (range.find()) {
                    unroll(range, entries, meant);
                }
            }
        }
        if (first < 0) {
            return map;
        }
        StringBuilder rewritten = new StringBuilder(text.substring(0, first));
        for (int from = 0; from < entries.size(); from += BLOCK_SIZE) {
            List<String> part = entries.subList(from, Math.min(entries.size(), from + BLOCK_SIZE));
            rewritten.append(part.size()).append(" beginbfchar\n");
            part.forEach(entry -> rewritten.append(entry).append('\n'));
            rewritten.append("endbfchar\n");
        }
        rewritten.append(BLOCK.matcher(text.substring(first)).replaceAll(""));
        COSStream stream = document.getDocument().createCOSStream();
        try (var out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(rewritten.toString().getBytes(StandardCharsets.ISO_8859_1));
        }
        return stream;
    }

    private static void unroll(Matcher range, List<String> entries, IntUnaryOperator meant) {
        int from = Integer.parseInt(range.group(1), 16);
        int to = Integer.parseInt(range.group(2), 16);
        String form = "%0" + range.group(1).length() + "X";
        for (int glyph = from; glyph <= to; glyph++) {
            entries.add("<" + String.format(Locale.ROOT, form, glyph) + "> <"
                    + plain(range.group(3), glyph - from, meant) + ">");
        }
    }

    /** UTF-16 in hexadecimal, with joined letters, presentation forms and radicals taken apart. */
    private static String plain(String hex, int offset, IntUnaryOperator meant) {
        StringBuilder text = new StringBuilder();
        for (int at = 0; at + 4 <= hex.length(); at += 4) {
            text.append((char) Integer.parseInt(hex.substring(at, at + 4), 16));
        }
        if (text.length() > 0) {
            int last = text.length() - 1;
            text.setCharAt(last, (char) (text.charAt(last) + offset));
        }
        StringBuilder clean = new StringBuilder();
        text.codePoints()
                .map(meant)
                .forEach(point -> clean.append(
                        isForm(point)
                                ? Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKC)
                                : Character.toString(point)));
        StringBuilder out = new StringBuilder();
        for (char unit : clean.toString().toCharArray()) {
            out.append(String.format(Locale.ROOT, "%04X", (int) unit));
        }
        return out.toString();
    }

    /** Lam with alef stays one sign: readers turn a line of Arabic round sign by sign, and would tear the two letters apart. */
    private static boolean isForm(int point) {
        return !(point >= 0xFEF5 && point <= 0xFEFC) && isCompatibilityForm(point);
    }

    private static boolean isCompatibilityForm(int point) {
        return point >= 0xFB00 && point <= 0xFDFF
                || point >= 0xFE70 && point <= 0xFEFC
                || point >= 0x2E80 && point <= 0x2FDF;
    }
}
