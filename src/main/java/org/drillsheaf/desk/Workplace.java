package org.drillsheaf.desk;

import java.time.Clock;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.picture.Pictures;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.store.Store;

/**
 * What every page works with, from the moment a record is open.
 *
 * @param coach who sits at the desk; saves carry the name
 * @param clock tells today and the time of a save
 */
public record Workplace(
        Folders folders,
        Knowledge knowledge,
        Store store,
        String coach,
        Clock clock,
        Background background,
        Words words,
        Pictures pictures,
        Dialogs dialogs) {

    /** The same desk, speaking another language. */
    Workplace in(Words other) {
        return new Workplace(folders, knowledge, store, coach, clock, background, other, pictures, dialogs);
    }

    /** The same desk with other drills, tests or phases, and so with other pictures. */
    Workplace with(Knowledge other) {
        Pictures anew = new Pictures(other.catalogue());
        return new Workplace(folders, other, store, coach, clock, background, words, anew, dialogs);
    }
}
