package org.drillsheaf.handout.press;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.Deflater;

/**
 * The last pass over a PDF: the same input gives the same bytes on every machine and in every time zone, what is copied or
 * searched is letters, and streams are compressed. The file is copied object by object, not read and written anew.
 */
final class PdfFinish {
    private static final Pattern XMP_DATE =
            Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(?:Z|[+-]\\d\\d:\\d\\d)");
    private static final Pattern INFORMATION_DATE = Pattern.compile("Date \\(D:[^)]*\\)");
    private static final Pattern TO_UNICODE = Pattern.compile("/ToUnicode (\\d+) 0 R");
    private static final DateTimeFormatter PDF_DATE =
            DateTimeFormatter.ofPattern("yyyyMMddHHmmss").withZone(ZoneOffset.UTC);
    /** Drawings are short numbers that differ: level 9 makes a file 5 % smaller and takes three times as long. */
    private static final int COMPRESSION = 4;

    private static final int TABLE_ROW = 1 + 4 + 2;

    private final WrittenPdf written;
    private final Twins twins;
    private final Instant created;
    private final ByteArrayOutputStream pdf;
    private final long[] offsets;
    /** Lengths of streams, by the number of the object that tells them. */
    private final Map<Integer, Integer> lengths = new HashMap<>();
    /** Numbers of the letter maps of fonts with ideographs. */
    private final Set<Integer> ideographs = new HashSet<>();

    private PdfFinish(byte[] raw, String page, Instant created) {
        this.written = WrittenPdf.of(raw);
        this.twins = Twins.in(page);
        this.created = created;
        this.pdf = new ByteArrayOutputStream(raw.length / 3);
        this.offsets = new long[written.places().size()];
    }

    /**
     * @param raw as the page setter wrote it, not compressed
     * @param page the page description that was set, to know which of two signs with one glyph was meant
     */
    static byte[] finish(byte[] raw, String page, Instant created) {
        return new PdfFinish(raw, page, created).finished();
    }

    private byte[] finished() {
        Deflater deflater = new Deflater(COMPRESSION);
        try {
            pdf.write(written.bytes(), 0, (int)
                    written.places().get(written.objects().get(0).number()).at());
            for (WrittenPdf.Piece piece : written.objects()) {
                offsets[piece.number()] = pdf.size();
                if (piece.hasStream()) {
                    stream(piece, deflater);
                } else {
                    put(object(piece));
                }
            }
            table(deflater);
        } finally {
            deflater.end();
        }
        return pdf.toByteArray();
    }

    private String object(WrittenPdf.Piece piece) {
        Integer length = lengths.get(piece.number());
        if (length != null) {
            return piece.number() + " 0 obj\n" + length + "\nendobj\n";
        } else if (piece.number() == written.information()) {
            return INFORMATION_DATE.matcher(piece.head()).replaceAll("Date (D:" + PDF_DATE.format(created) + "Z)");
        }
        Matcher map = TO_UNICODE.matcher(piece.head());
        if (map.find() && piece.head().contains("+NotoSansSC")) {
            ideographs.add(Integer.parseInt(map.group(1)));
        }
        return piece.head();
    }

    private void stream(WrittenPdf.Piece piece, Deflater deflater) {
        String head = piece.head();
        byte[] content = content(piece);
        if (!head.contains("/Type /Metadata")) {
            content = compressed(content, deflater);
            head = head.replaceFirst("<<", "<< /Filter /FlateDecode");
        }
        int told = WrittenPdf.lengthObject(head);
        if (told > 0) {
            lengths.put(told, content.length);
        } else {
            head = head.replaceFirst("/Length \\d+", "/Length " + content.length);
        }
        put(head);
        pdf.writeBytes(content);
        put("\nendstream\nendobj\n");
    }

    private byte[] content(WrittenPdf.Piece piece) {
        byte[] bytes = java.util.Arrays.copyOfRange(written.bytes(), piece.from(), piece.to());
        if (piece.head().contains("/Type /Metadata")) {
            String iso = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(created.atOffset(ZoneOffset.UTC));
            String xmp = new String(bytes, StandardCharsets.UTF_8);
            return XMP_DATE.matcher(xmp).replaceAll(iso).getBytes(StandardCharsets.UTF_8);
        }
        String start = WrittenPdf.latin(bytes, 0, Math.min(bytes.length, 20));
        if (LetterMap.is(start)) {
            IntUnaryOperator meant = twins.within(ideographs.contains(piece.number()));
            return WrittenPdf.ascii(LetterMap.inLetters(WrittenPdf.latin(bytes, 0, bytes.length), meant));
        }
        return bytes;
    }

    private static byte[] compressed(byte[] content, Deflater deflater) {
        deflater.reset();
        deflater.setInput(content);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream(content.length / 3 + 64);
        byte[] buffer = new byte[8192];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        return out.toByteArray();
    }

    /** Where each object is now; those within object streams stay where they were. */
    private void table(Deflater deflater) {
        int start = pdf.size();
        byte[] before = pdf.toByteArray();
        List<WrittenPdf.Place> places = written.places();
        int table = places.size() - 1;
        offsets[table] = start;
        ByteBuffer rows = ByteBuffer.allocate(TABLE_ROW * places.size());
        for (int number = 0; number < places.size(); number++) {
            WrittenPdf.Place place = places.get(number);
            long at = place.kind() == WrittenPdf.BY_ITSELF ? offsets[number] : place.at();
            rows.put((byte) place.kind()).putInt((int) at).putShort((short) place.index());
        }
        byte[] content = compressed(rows.array(), deflater);
        String id = identifier(before);
        put(table + " 0 obj\n<< /Type /XRef /Size " + places.size() + " /W [1 4 2] /Root " + written.root()
                + " 0 R /Info " + written.information() + " 0 R /ID [<" + id + "> <" + id
                + ">] /Filter /FlateDecode /Length " + content.length + " >>\nstream\n");
        pdf.writeBytes(content);
        put("\nendstream\nendobj\nstartxref\n" + start + "\n%%EOF\n");
    }

    /** Two files with the same content are one document. */
    private static String identifier(byte[] content) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().withUpperCase().formatHex(hash, 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private void put(String text) {
        pdf.writeBytes(WrittenPdf.ascii(text));
    }
}
