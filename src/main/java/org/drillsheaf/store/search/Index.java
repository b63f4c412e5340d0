package org.drillsheaf.store.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds entries by the beginnings of their words. A plain walk over folded texts in memory: 100 000 of them take a few
 * milliseconds whatever was typed, which no index by word keeps up with on a single letter. Safe for several threads.
 */
final class Index<K> {

    /** One entry: what it is sorted and shown by, and everything it can be found by. */
    record Entry<K>(K key, String sortName, String text) {}

    private record Row<K>(K key, String sort, String words) implements Comparable<Row<K>> {
        @Override
        public int compareTo(Row<K> other) {
            return sort.compareTo(other.sort);
        }
    }

    private final Map<K, Row<K>> rows = new HashMap<>();
    private final List<Row<K>> sorted = new ArrayList<>(); // always in order: a save must not slow the next search

    synchronized void fill(List<Entry<K>> entries) {
        rows.clear();
        sorted.clear();
        entries.forEach(entry -> rows.put(entry.key(), row(entry)));
        sorted.addAll(rows.values());
        sorted.sort(null);
    }

    synchronized void put(Entry<K> entry) {
        remove(entry.key());
        Row<K> row = row(entry);
        rows.put(entry.key(), row);
        sorted.add(firstAtOrAfter(row.sort()), row);
    }

    synchronized void remove(K key) {
        Row<K> row = rows.remove(key);
        if (row != null) {
            int place = firstAtOrAfter(row.sort());
            while (sorted.get(place) != row) { // others may be called the same
                place++;
            }
            sorted.remove(place);
        }
    }

    private static <K> Row<K> row(Entry<K> entry) {
        return new Row<>(entry.key(), Folding.fold(entry.sortName()), " " + Folding.fold(entry.text()));
    }

    /** Entries in which every typed word begins a word, those whose name begins with the first word first, then by name. */
    synchronized List<K> find(String typed, int most) {
        String[] words = Arrays.stream(Folding.fold(typed).split(" "))
                .filter(w -> !w.isEmpty())
                .map(w -> " " + w)
                .toArray(String[]::new);
        Set<K> found = new LinkedHashSet<>();
        if (words.length > 0) {
            String first = words[0].substring(1);
            for (int i = firstAtOrAfter(first); i < sorted.size() && found.size() < most; i++) {
                if (!sorted.get(i).sort().startsWith(first)) {
                    break;
                }
                if (holds(sorted.get(i), words)) {
                    found.add(sorted.get(i).key());
                }
            }
        }
        for (int i = 0; i < sorted.size() && found.size() < most; i++) {
            if (holds(sorted.get(i), words)) {
                found.add(sorted.get(i).key());
            }
        }
        return List.copyOf(found);
    }

    private int firstAtOrAfter(String start) {
        int low = 0;
        int high = sorted.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted.get(middle).sort().compareTo(start) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean holds(Row<?> row, String[] words) {
        for (String word : words) {
            if (!row.words().contains(word)) {
                return false;
            }
        }
        return true;
    }
}
