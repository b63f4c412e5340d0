package org.drillsheaf.drill.safety;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * A sentence that handouts print about practising at home.
 *
 * @param uses printed only when the program uses one of these pieces of equipment; empty = always
 * @param conditions printed only for clients with one of these; empty = for all
 */
public record Caution(String id, Group group, LocalText text, Set<String> uses, Set<String> conditions, Source source) {

    /** Where on the paper it belongs. */
    public enum Group {
        SET_UP,
        WHILE_TRAINING;

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        public static Optional<Group> of(String id) {
            return Arrays.stream(values()).filter(g -> g.id().equals(id)).findFirst();
        }
    }

    public Caution {
        uses = Set.copyOf(uses);
        conditions = Set.copyOf(conditions);
    }

    /** Whether it is printed for a program with this equipment and a client with these conditions. */
    public boolean concerns(Set<String> equipment, Set<String> clientConditions) {
        return (uses.isEmpty() || uses.stream().anyMatch(equipment::contains))
                && (conditions.isEmpty() || conditions.stream().anyMatch(clientConditions::contains));
    }
}
