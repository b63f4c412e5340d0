package org.drillsheaf.handout.press;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.handout.paint.Picture;

/**
 * What pictures look like in the language of a PDF page. Drills are printed again and again, and writing the numbers of their
 * pictures is dear. Safe for several threads.
 */
final class InkMemory {
    /** More than the pictures of a large catalogue in one size; one takes about 15 kB. */
    private static final int MOST = 600;

    /** Only pictures whose painter {@link Picture.Painter#comesAgain comes again}. */
    private final Map<Picture, Ink> known = Collections.synchronizedMap(new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Picture, Ink> eldest) {
            return size() > MOST;
        }
    });

    Optional<Ink> of(Picture picture) {
        return Optional.ofNullable(known.get(picture));
    }

    void keep(Picture picture, Ink ink) {
        known.put(picture, ink);
    }
}
