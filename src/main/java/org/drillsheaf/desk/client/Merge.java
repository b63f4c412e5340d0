package org.drillsheaf.desk.client;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.store.record.Content;

/**
 * Two changes of one part laid together, field by field. A list whose items have no ids, such as the pins, is one field: its
 * items cannot be told apart when both sides added some.
 */
final class Merge {
    private Merge() {}

    /** Theirs with every field that mine changed against what both started from. */
    static Content of(Content base, Content mine, Content theirs) {
        return of(base, mine, theirs, Set.of());
    }

    /** @param except fields in which theirs stands although mine changed them */
    static Content of(Content base, Content mine, Content theirs, Set<String> except) {
        Content merged = theirs;
        for (String path : changed(base, mine)) {
            if (except.stream().noneMatch(kept -> isWithin(path, kept))) {
                Optional<Content> value = mine.below(path);
                merged = value.isPresent() ? merged.with(path, value.get()) : merged.without(path);
            }
        }
        return merged;
    }

    /** The fields that both changed, and not alike. */
    static TreeSet<String> clashing(Content base, Content mine, Content theirs) {
        TreeSet<String> clashing = new TreeSet<>();
        TreeSet<String> others = changed(base, theirs);
        for (String path : changed(base, mine)) {
            for (String other : others) {
                if (isWithin(path, other)) {
                    clashing.add(other);
                } else if (isWithin(other, path)) {
                    clashing.add(path);
                }
            }
        }
        clashing.removeIf(path -> same(mine, theirs, path));
        return clashing;
    }

    /** The fields in which a version differs from the one it was made from; a value that became a map is one field. */
    static TreeSet<String> changed(Content base, Content version) {
        TreeSet<String> paths = new TreeSet<>();
        base.fields().keySet().forEach(path -> paths.add(field(path)));
        version.fields().keySet().forEach(path -> paths.add(field(path)));
        paths.removeIf(path -> same(base, version, path));
        paths.removeIf(path -> paths.stream().anyMatch(other -> !other.equals(path) && isWithin(path, other)));
        return paths;
    }

    private static boolean same(Content one, Content other, String path) {
        return one.below(path).map(Content::fields).equals(other.below(path).map(Content::fields));
    }

    private static boolean isWithin(String path, String outer) {
        return path.equals(outer) || path.startsWith(outer + "/");
    }

    private static String field(String path) {
        return path.replaceFirst("/\\d+(/.*)?$", "");
    }
}
