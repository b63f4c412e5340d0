package org.drillsheaf;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Checks words that must be known, and says which one may have been meant. */
public final class Ids {
    private static final int LONGEST = 60;
    private static final int MOST_LISTED = 40;

    private Ids() {}

    /**
     * Reports an error at the node when the id is not known.
     *
     * @param kind what the id would be, for example {@code condition}
     * @return true when it is known
     */
    public static boolean check(YamlNode node, String id, Collection<String> known, String kind, Problems problems) {
        if (known.contains(id)) {
            return true;
        }
        String shown = id.length() > LONGEST ? id.substring(0, LONGEST) + "…" : id;
        node.error(problems, "There is no " + kind + " “" + shown + "”", remedy(id, known));
        return false;
    }

    private static String remedy(String id, Collection<String> known) {
        Optional<String> near = nearest(id, known);
        if (near.isPresent()) {
            return "Write “" + near.get() + "” if that was meant";
        }
        if (known.isEmpty() || known.size() > MOST_LISTED) {
            return "Check the spelling, or remove it";
        }
        return "Known are: " + String.join(", ", known.stream().sorted().toList());
    }

    /** The known id that differs from this one by a few letters only. */
    public static Optional<String> nearest(String id, Collection<String> known) {
        if (id.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream()
                .filter(k -> distance(id, k) <= (k.length() < 4 ? 1 : Math.max(2, k.length() / 4)))
                .min(Comparator.<String>comparingInt(k -> distance(id, k)).thenComparing(Comparator.naturalOrder()));
    }

    /** Number of letters to change, add or leave out (Levenshtein). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
