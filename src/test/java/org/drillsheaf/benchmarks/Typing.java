package org.drillsheaf.benchmarks;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** What people type into a search field: one letter after the other, and what stands there after each letter is one question. */
final class Typing {
    private final List<String> typed = new ArrayList<>();
    private int turn;

    /**
     * Each name is typed in one way, by turns: as it is written; in small letters without accents; in capitals; the last word
     * first; the beginnings of two words; with a letter too many, which finds nothing.
     */
    Typing(List<String> names) {
        Random random = new Random(2);
        for (int n = 0; n < names.size(); n++) {
            String text = inOneWay(names.get(n), n % 6, random);
            for (int letters = 1; letters <= text.length(); letters++) {
                typed.add(text.substring(0, letters));
            }
        }
    }

    private static String inOneWay(String name, int way, Random random) {
        String[] words = name.split("[ -]");
        String last = words[words.length - 1];
        return switch (way) {
            case 0 -> name;
            case 1 -> plain(name);
            case 2 -> name.toUpperCase(Locale.ROOT);
            case 3 -> plain(last + " " + words[0]);
            case 4 -> begin(words[0]) + " " + begin(last);
            default -> {
                int at = 1 + random.nextInt(name.length() - 1);
                yield name.substring(0, at) + "q" + name.substring(at);
            }
        };
    }

    private static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }

    private static String begin(String word) {
        return word.substring(0, Math.min(3, word.length()));
    }

    int size() {
        return typed.size();
    }

    String next() {
        return typed.get(turn++ % typed.size());
    }
}
