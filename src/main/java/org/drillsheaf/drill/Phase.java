package org.drillsheaf.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.saying.Saying;

/** The four phases of a program, in their order. What a phase weighs is data of the program package. */
public enum Phase {
    SETTLE,
    RESTORE,
    REFERENCE,
    INTEGRATE;

    /** The word in data files, for example {@code settle}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The name, to be said in any language. */
    public Saying saidName() {
        return Saying.name(Saying.Name.Kind.PHASE, id());
    }

    /** The English word, for example {@code Settle}. */
    public String title() {
        return name().charAt(0) + id().substring(1);
    }

    /** The phase after this one; none after Integrate. */
    public Optional<Phase> next() {
        return ordinal() + 1 < values().length ? Optional.of(values()[ordinal() + 1]) : Optional.empty();
    }

    public static Optional<Phase> of(String id) {
        return Arrays.stream(values()).filter(p -> p.id().equals(id)).findFirst();
    }
}
