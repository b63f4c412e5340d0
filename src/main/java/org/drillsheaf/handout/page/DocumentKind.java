package org.drillsheaf.handout.page;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Everything that can be printed. Each has a template {@code <id>.ftlx}. */
public enum DocumentKind {
    /** "Your practice": one phase, taken home. */
    CLIENT_HANDOUT,
    /** Pictures, names and doses, to stand on a shelf or hang on a door. */
    REMINDER_CARD,
    /** A grid for the weeks until the next appointment. */
    PRACTICE_LOG,
    /** Screen, reading, reasons and signature, for the file. */
    COACH_SHEET,
    /** What has changed between visits. */
    PROGRESS_REPORT,
    /** For a clinician, when a safety answer stops the program. */
    REFERRAL_NOTE,
    /** Every drill of the house, for the clinic. */
    CATALOGUE_BOOK;

    /** Name of the document in commands and of its template, for example {@code client-handout}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether it is made for one client; otherwise for the clinic. */
    public boolean isForAClient() {
        return this != CATALOGUE_BOOK;
    }

    /** Whether it needs a program; the others need a screen, or nothing. */
    public boolean needsProgram() {
        return switch (this) {
            case CLIENT_HANDOUT, REMINDER_CARD, PRACTICE_LOG, COACH_SHEET -> true;
            case PROGRESS_REPORT, REFERRAL_NOTE, CATALOGUE_BOOK -> false;
        };
    }

    /** Whether the client reads it; otherwise it stays in the house or goes to a clinician. */
    public boolean isReadByTheClient() {
        return switch (this) {
            case CLIENT_HANDOUT, REMINDER_CARD, PRACTICE_LOG, PROGRESS_REPORT -> true;
            case COACH_SHEET, REFERRAL_NOTE, CATALOGUE_BOOK -> false;
        };
    }

    public static Optional<DocumentKind> of(String id) {
        return Arrays.stream(values()).filter(kind -> kind.id().equals(id)).findFirst();
    }
}
