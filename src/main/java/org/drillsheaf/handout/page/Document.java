package org.drillsheaf.handout.page;

/** Something to print. */
public sealed interface Document
        permits ClientHandout, ReminderCard, PracticeLog, CoachSheet, ProgressReport, ReferralNote {
    Frame frame();

    DocumentKind kind();
}
