package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drillsheaf.drill.Catalogue;

/** The order of a session: the coach's own first, then from lying to walking, easier before harder, then by id. */
final class SessionOrder {
    private SessionOrder() {}

    static List<DoseChoice> of(List<DoseChoice> drills, List<String> coachOrder, Catalogue catalogue) {
        List<String> positions = new ArrayList<>(catalogue.words().positions().keySet());
        return drills.stream()
                .sorted(Comparator.<DoseChoice>comparingInt(
                                d -> place(coachOrder, d.drill().id()))
                        .thenComparingInt(
                                d -> place(positions, d.drill().positions().get(0)))
                        .thenComparingInt(DoseChoice::effort)
                        .thenComparing(d -> d.drill().id()))
                .toList();
    }

    private static int place(List<String> order, String id) {
        int place = order.indexOf(id);
        return place < 0 ? order.size() : place;
    }
}
