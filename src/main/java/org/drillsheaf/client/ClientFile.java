package org.drillsheaf.client;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Everything one client's file says.
 *
 * @param file name of the file, for messages
 * @param visits in the order of their dates, at least one, never two on one date
 */
public record ClientFile(String file, Client client, List<ClientCondition> conditions, List<Visit> visits) {

    public ClientFile {
        conditions = List.copyOf(conditions);
        visits = List.copyOf(visits);
    }

    public Visit lastVisit() {
        return visits.get(visits.size() - 1);
    }

    public Optional<Visit> visitOn(LocalDate date) {
        return visits.stream().filter(v -> v.date().equals(date)).findFirst();
    }
}
