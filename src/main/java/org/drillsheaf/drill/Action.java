package org.drillsheaf.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a condition does to a drill, from mild to strict: the order of the constants is the order of strictness. */
public enum Action {
    /** Offered as written. */
    ALLOWED,
    /** Offered with a printed sentence. */
    CAUTION,
    /** Offered only with a written change. */
    MODIFY,
    /** Not offered. */
    EXCLUDE;

    /** The word in data files, for example {@code exclude}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Action> of(String id) {
        return Arrays.stream(values()).filter(a -> a.id().equals(id)).findFirst();
    }

    public Action stricter(Action other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
