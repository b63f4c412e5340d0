package org.drillsheaf.desk.client;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.drillsheaf.store.record.Content;

/** Two changes of one part laid together, field by field. */
final class Merge {
    private Merge() {}

    /** Theirs with every field that mine changed against what both started from. */
    static Content of(Content base, Content mine, Content theirs) {
        if (mine.equals(base)) {
            return theirs;
        }
        Map<String, String> before = base.fields();
        Map<String, String> now = mine.fields();
        TreeSet<String> paths = new TreeSet<>(before.keySet());
        paths.addAll(now.keySet());
        Content merged = theirs;
        for (String path : paths) {
            if (!Objects.equals(before.get(path), now.get(path))) {
                Optional<Content> value = mine.below(path);
                merged = value.isPresent() ? merged.with(path, value.get()) : merged.without(path);
            }
        }
        return merged;
    }
}
