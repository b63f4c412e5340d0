package org.drillsheaf.handout.page;

/** Something to print. */
public sealed interface Document permits ClientHandout, ReferralNote {
    Frame frame();

    /** Name of the document, and of its template: {@code client-handout}. */
    String kind();
}
