package org.drillsheaf.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.check.CatalogueCheck;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.saying.Speech;

/** Holds a drill that comes in to everything that the catalogue check asks of a single drill. */
public final class IncomingCheck {

    /** Is told how far a long check has come. */
    public interface Progress {
        void done(int drills, int all);
    }

    private final CatalogueReader catalogueReader;
    private final CatalogueCheck check;
    private final Safety safety;
    private final PoseMeasuring measuring = new PoseMeasuring();
    private final Progress progress;

    /**
     * @param today the day that reviews are counted to
     * @param speech words what a safety rule measured
     */
    public IncomingCheck(
            Library library,
            CatalogueReader catalogueReader,
            DrillReader drillReader,
            LocalDate today,
            Speech speech,
            Progress progress) {
        this.catalogueReader = catalogueReader;
        this.check = new CatalogueCheck(library.catalogue(), library.safetyRules(), drillReader, today, speech);
        this.safety = new Safety(library.safetyRules(), drillReader, measuring);
        this.progress = progress;
    }

    /** Shape, numbers, and every name that a drill uses. */
    List<Problem> read(Collection<YamlNode> drills, Set<String> ids) {
        Problems problems = new Problems();
        catalogueReader.among(drills, ids, problems);
        return problems.all();
    }

    /** Texts, poses and safety tags of drills that could be read. */
    List<Problem> look(Collection<YamlNode> drills, Set<String> ids) {
        List<Problem> problems = new ArrayList<>();
        int done = 0;
        for (Drill drill : catalogueReader.among(drills, ids, new Problems())) {
            problems.addAll(check.drill(drill, safety, measuring));
            progress.done(++done, drills.size());
        }
        return problems;
    }
}
