package org.drillsheaf.handout.page;

import java.time.YearMonth;
import java.util.List;

/**
 * Every drill of the house, for the clinic's shelf: by family with pictures and words, and by phase as a list.
 *
 * @param statureCm the body that distances are worked out for
 */
public record CatalogueBook(Frame frame, int statureCm, List<Family> families, List<PhaseList> phases)
        implements Document {

    /** Drills that grow out of each other, the easiest first. */
    public record Family(String id, Told name, List<Entry> drills) {
        public Family {
            drills = List.copyOf(drills);
        }
    }

    /**
     * One drill as written, for the right side.
     *
     * @param level place in its family
     * @param phases names
     * @param equipment empty when the floor is enough
     * @param pictures in the author's style: labels and arcs of angles
     * @param stop further stop rules of this drill
     */
    public record Entry(
            String id,
            Told name,
            int level,
            List<String> phases,
            List<Aim> aims,
            List<Told> equipment,
            Told purpose,
            List<DrillBlock.Figure> pictures,
            List<Told> steps,
            List<Told> feel,
            List<Told> notFeel,
            List<Told> stop,
            int revision,
            YearMonth checked,
            String author) {
        public Entry {
            phases = List.copyOf(phases);
            aims = List.copyOf(aims);
            equipment = List.copyOf(equipment);
            pictures = List.copyOf(pictures);
            steps = List.copyOf(steps);
            feel = List.copyOf(feel);
            notFeel = List.copyOf(notFeel);
            stop = List.copyOf(stop);
        }
    }

    /** A goal with the strength of the drill for it, 1 to 3. */
    public record Aim(Told goal, int strength) {}

    /** The drills that may be used in a phase. */
    public record PhaseList(int number, String name, List<Place> drills) {
        public PhaseList {
            drills = List.copyOf(drills);
        }
    }

    /** Where a drill is found. */
    public record Place(String id, Told name) {}

    public CatalogueBook {
        families = List.copyOf(families);
        phases = List.copyOf(phases);
    }

    @Override
    public DocumentKind kind() {
        return DocumentKind.CATALOGUE_BOOK;
    }
}
