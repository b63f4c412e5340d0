package org.drillsheaf.store.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    private Map<K, Row<K>> rows = new HashMap<>();
    private List<Row<K>> sorted = List.of();
    private boolean isSorted = true;

    synchronized void fill(List<Entry<K>> entries) {
        Map<K, Row<K>> filled = new HashMap<>(entries.size() * 2);
        entries.forEach(e -> filled.put(e.key(), row(e)));
        rows = filled;
        isSorted = false;
    }

    synchronized void put(Entry<K> entry) {
        rows.put(entry.key(), row(entry));
        isSorted = false;
    }

    synchronized void remove(K key) {
        rows.remove(key);
        isSorted = false;
    }

    synchronized int size() {
        return rows.size();
    }

    private static <K> Row<K> row(Entry<K> entry) {
        return new Row<>(entry.key(), Folding.fold(entry.sortName()), " " + Folding.fold(entry.text()));
    }

    private synchronized List<Row<K>> sorted() {
        if (!isSorted) {
            List<Row<K>> all = new ArrayList<>(rows.values());
            all.sort(null);
            sorted = all;
            isSorted = true;
        }
        return sorted;
    }

    /** Entries in which every typed word begins a word, those whose name begins with the first word first, then by name. */
    List<K> find(String typed, int most) {
        String[] words = Arrays.stream(Folding.fold(typed).split(" "))
                .filter(w -> !w.isEmpty())
                .map(w -> " " + w)
                .toArray(String[]::new);
        Map<K, Boolean> found = new LinkedHashMap<>();
        List<Row<K>> all = sorted();
        if (words.length > 0) {
            String first = words[0].substring(1);
            for (int i = firstAtOrAfter(all, first); i < all.size() && found.size() < most; i++) {
                if (!all.get(i).sort().startsWith(first)) {
                    break;
                }
                if (holds(all.get(i), words)) {
                    found.put(all.get(i).key(), true);
                }
            }
        }
        for (int i = 0; i < all.size() && found.size() < most; i++) {
            if (holds(all.get(i), words)) {
                found.putIfAbsent(all.get(i).key(), true);
            }
        }
        return List.copyOf(found.keySet());
    }

    private static <K> int firstAtOrAfter(List<Row<K>> all, String start) {
        int low = 0;
        int high = all.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (all.get(middle).sort().compareTo(start) < 0) {
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
