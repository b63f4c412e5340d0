package org.drillsheaf.handout.press;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The part of a PDF that tells which letter a glyph stands for. What is copied or searched has to be letters, not the joined
 * forms that were printed.
 */
final class LetterMap {
    private static final Pattern SINGLE = Pattern.compile("<(\\p{XDigit}+)>\\s*<(\\p{XDigit}+)>");
    private static final Pattern RANGE = Pattern.compile("<(\\p{XDigit}+)>\\s*<(\\p{XDigit}+)>\\s*<(\\p{XDigit}+)>");
    private static final Pattern BLOCK =
            Pattern.compile("\\d+\\s+beginbf(char|range)(.*?)endbf\\1\\s*", Pattern.DOTALL);
    /** More entries are not allowed in one block of a character map. */
    private static final int BLOCK_SIZE = 100;

    private LetterMap() {}

    static boolean is(String text) {
        return text.startsWith("/CIDInit");
    }

    /** @param meant sign told to sign written */
    static String inLetters(String map, IntUnaryOperator meant) {
        List<String> entries = new ArrayList<>();
        Matcher block = BLOCK.matcher(map);
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
        StringBuilder rewritten = new StringBuilder(map.substring(0, first));
        for (int from = 0; from < entries.size(); from += BLOCK_SIZE) {
            List<String> part = entries.subList(from, Math.min(entries.size(), from + BLOCK_SIZE));
            rewritten.append(part.size()).append(" beginbfchar\n");
            part.forEach(entry -> rewritten.append(entry).append('\n'));
            rewritten.append("endbfchar\n");
        }
        return rewritten
                .append(BLOCK.matcher(map.substring(first)).replaceAll(""))
                .toString();
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
        for (int i = 0; i < clean.length(); i++) {
            int unit = clean.charAt(i);
            for (int shift = 12; shift >= 0; shift -= 4) {
                out.append(Character.forDigit(unit >> shift & 15, 16));
            }
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
