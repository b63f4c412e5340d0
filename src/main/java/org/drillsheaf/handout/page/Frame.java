package org.drillsheaf.handout.page;

import java.time.LocalDate;
import java.util.Optional;
import org.drillsheaf.client.Paper;

/**
 * What every document carries.
 *
 * @param language tag of the fixed phrases
 * @param date of the program or the screen, never of the printing
 * @param called the client's first name, as they like to hear it
 * @param signedBy the coach who checked it; empty when nobody did, and then the paper says so
 * @param large whether body text is set for eyes that need 18 pt
 */
public record Frame(
        String language,
        LocalDate date,
        String called,
        String fullName,
        String coach,
        Optional<String> signedBy,
        Paper paper,
        boolean large) {}
