package org.drillsheaf.desk.catalogue;

import java.util.List;
import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.input.KeyEvent;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.drill.RevisionShelf;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;

/** The place of the drills in the window's frame. */
public final class DrillsPage implements Page {
    private final DrillsPlace place;

    /**
     * @param changed is told when a drill of the house was written
     * @param keysChanged is told when other keys count
     */
    public DrillsPage(Workplace workplace, Runnable changed, Runnable keysChanged) {
        Words words = workplace.words();
        place = new DrillsPlace(
                workplace.folders(),
                Optional.of(new RevisionShelf(workplace.store().drills(), workplace.coach(), words)),
                words,
                new TradeWords(words, workplace.knowledge().vocabulary())::phase,
                workplace.clock(),
                workplace.background(),
                workplace.dialogs(),
                changed,
                keysChanged);
    }

    @Override
    public Parent node() {
        return place;
    }

    @Override
    public List<Hint> hints() {
        return place.hints();
    }

    @Override
    public void shown() {
        place.list().ifPresent(CatalogueList::focusSearch);
    }

    @Override
    public boolean pressed(KeyEvent key) {
        return place.pressed(key) || place.page().filter(p -> p.pressed(key)).isPresent();
    }

    @Override
    public void undo() {
        place.page().ifPresent(p -> p.model().draft().undo());
    }

    @Override
    public void redo() {
        place.page().ifPresent(p -> p.model().draft().redo());
    }
}
