package org.drillsheaf.handout.press;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A PDF as the page setter wrote it a moment ago, with nothing compressed: objects one after the other, the structure tree
 * packed into object streams, and one table of places at the end. Reads that form and no other.
 *
 * @param bytes whole file
 * @param places of all objects by their number
 * @param objects those that stand in the file by themselves, in its order, without the table
 * @param information number of the object with title and dates
 * @param root number of the catalogue
 */
record WrittenPdf(byte[] bytes, List<Place> places, List<Piece> objects, int information, int root) {
    private static final Pattern LENGTH = Pattern.compile("/Length (\\d+)");
    private static final byte[] STREAM = ascii("stream\n");
    private static final byte[] END_OF_STREAM = ascii("\nendstream\nendobj\n");
    private static final byte[] LAST_PLACE = ascii("startxref\n");
    /** A dictionary before a stream is never longer. */
    private static final int LONGEST_HEAD = 1000;
    /** Kind, place and number within the place: the widths of a row of the table. */
    private static final int ROW = 1 + 8 + 2;

    static final int FREE = 0;
    static final int BY_ITSELF = 1;

    /**
     * Where an object is.
     *
     * @param kind {@link #FREE}, {@link #BY_ITSELF}, or 2 in an object stream
     * @param at offset in the file, or number of the object stream
     * @param index within the object stream
     */
    record Place(int kind, long at, int index) {}

    /**
     * One object of the file.
     *
     * @param head all before the bytes of a stream, or the whole object
     * @param from first byte of the stream; equal to {@code to} when there is none
     * @param to end of the stream
     */
    record Piece(int number, String head, int from, int to) {
        boolean hasStream() {
            return head.endsWith("stream\n");
        }
    }

    static WrittenPdf of(byte[] bytes) {
        int table = number(bytes, lastIndexOf(bytes, LAST_PLACE) + LAST_PLACE.length);
        int rows = indexOf(bytes, STREAM, table, bytes.length) + STREAM.length;
        String trailer = latin(bytes, table, rows);
        if (!trailer.contains("/W [1 8 2]") || trailer.contains("/Filter")) {
            throw new IllegalStateException("the page setter wrote another kind of table: " + trailer);
        }
        List<Place> places = new ArrayList<>();
        ByteBuffer row = ByteBuffer.wrap(bytes, rows, named(trailer, "/Length (\\d+)"));
        while (row.remaining() >= ROW) {
            places.add(new Place(row.get(), row.getLong(), row.getShort() & 0xFFFF));
        }
        return new WrittenPdf(
                bytes,
                places,
                pieces(bytes, places, table),
                named(trailer, "/Info (\\d+)"),
                named(trailer, "/Root (\\d+)"));
    }

    private static List<Piece> pieces(byte[] bytes, List<Place> places, int table) {
        List<Integer> numbers = new ArrayList<>();
        for (int number = 0; number < places.size(); number++) {
            if (places.get(number).kind() == BY_ITSELF && places.get(number).at() != table) {
                numbers.add(number);
            }
        }
        numbers.sort(Comparator.comparingLong(number -> places.get(number).at()));
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            int from = (int) places.get(numbers.get(i)).at();
            int to = i + 1 == numbers.size()
                    ? table
                    : (int) places.get(numbers.get(i + 1)).at();
            pieces.add(piece(bytes, numbers.get(i), from, to));
        }
        return pieces;
    }

    private static Piece piece(byte[] bytes, int number, int from, int to) {
        int end = to - END_OF_STREAM.length;
        if (end < from || !matches(bytes, END_OF_STREAM, end)) {
            return new Piece(number, latin(bytes, from, to), to, to);
        }
        int data = indexOf(bytes, STREAM, from, Math.min(end, from + LONGEST_HEAD)) + STREAM.length;
        return new Piece(number, latin(bytes, from, data), data, end);
    }

    /** Number of the object that holds a stream's length, 0 when its dictionary does. */
    static int lengthObject(String head) {
        Matcher length = LENGTH.matcher(head);
        return length.find() && head.startsWith(" 0 R", length.end()) ? Integer.parseInt(length.group(1)) : 0;
    }

    private static int named(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        if (!found.find()) {
            throw new IllegalStateException("the page setter wrote no " + pattern + " into " + text);
        }
        return Integer.parseInt(found.group(1));
    }

    private static int number(byte[] bytes, int at) {
        int end = at;
        while (bytes[end] >= '0' && bytes[end] <= '9') {
            end++;
        }
        return Integer.parseInt(latin(bytes, at, end));
    }

    private static int indexOf(byte[] bytes, byte[] wanted, int from, int to) {
        for (int at = from; at + wanted.length <= to; at++) {
            if (matches(bytes, wanted, at)) {
                return at;
            }
        }
        throw new IllegalStateException("the page setter wrote no “" + latin(wanted, 0, wanted.length) + "”");
    }

    private static int lastIndexOf(byte[] bytes, byte[] wanted) {
        for (int at = bytes.length - wanted.length; at >= 0; at--) {
            if (matches(bytes, wanted, at)) {
                return at;
            }
        }
        throw new IllegalStateException("the page setter wrote no “" + latin(wanted, 0, wanted.length) + "”");
    }

    private static boolean matches(byte[] bytes, byte[] wanted, int at) {
        for (int i = 0; i < wanted.length; i++) {
            if (bytes[at + i] != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    static String latin(byte[] bytes, int from, int to) {
        return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
    }

    static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
