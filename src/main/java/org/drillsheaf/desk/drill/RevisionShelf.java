package org.drillsheaf.desk.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.store.record.DrillRevision;
import org.drillsheaf.store.record.Drills;
import org.drillsheaf.store.sql.StoreFailure;

/** Every edition of a drill in the record. */
public final class RevisionShelf {
    private final Drills drills;
    private final String coach;
    private final Words words;

    /** An edition with its name. */
    public record Edition(String name, YamlDocument document) {}

    /** @param coach who keeps */
    public RevisionShelf(Drills drills, String coach, Words words) {
        this.drills = drills;
        this.coach = coach;
        this.words = words;
    }

    /** Keeps an edition in the record; what went wrong in words, empty when nothing did. The file is kept in any case. */
    public Optional<String> keep(Drill drill) {
        try {
            long version = drills.line(drill.id()).map(Drills.Line::version).orElse(0L);
            return drills.save(drill, DrillRevision.Origin.HOUSE, version, coach)
                            .isPresent()
                    ? Optional.empty()
                    : Optional.of(words.text("drill.record-clash"));
        } catch (StoreFailure e) {
            return Optional.of(words.text("drill.record-failed", e.problem().what()));
        }
    }

    /** The editions of a drill, newest first. */
    List<Edition> editions(String drill) {
        List<Edition> all = new ArrayList<>();
        for (DrillRevision revision : drills.revisions(drill)) {
            YamlDocument.of(drill, revision.yaml(), new Problems())
                    .ifPresent(document -> all.add(
                            0,
                            new Edition(
                                    words.text(
                                            "drill.edition",
                                            revision.revision(),
                                            words.text("drill.origin."
                                                    + revision.origin().name().toLowerCase(java.util.Locale.ROOT)),
                                            revision.savedBy()),
                                    document)));
        }
        return all;
    }
}
