package org.drillsheaf.handout.page;

/** Something to print. */
public sealed interface Document
        permits ClientHandout, ReminderCard, PracticeLog, CoachSheet, ProgressReport, ReferralNote, CatalogueBook {
    Frame frame();

    DocumentKind kind();
}
