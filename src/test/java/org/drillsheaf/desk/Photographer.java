package org.drillsheaf.desk;

import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.drillsheaf.desk.setting.DeskSettings;

/**
 * Photographs the window as it is, into a folder.
 *
 * @param everyLook also dark, large and from right to left, to be looked through
 */
record Photographer(DeskRun desk, Path out, boolean everyLook) {
    private static final int WIDTH = 1440;
    private static final int HEIGHT = 900;

    /** Changes how the window looks. */
    void look(UnaryOperator<DeskSettings> change) {
        DeskRun.fx(() -> {
            desk.window().settings(change.apply(desk.window().settings()));
            return true;
        });
        pause(600);
    }

    /** Waits until every picture is drawn. */
    void photograph(String name) {
        for (int wait = 0;
                wait < 100 && DeskRun.fx(() -> Seen.emptyWells(desk.scene().getRoot())) > 0;
                wait++) {
            pause(300);
        }
        pause(300);
        snap(name);
    }

    /** At once, for what is to be seen only for a moment. */
    void snap(String name) {
        desk.photograph(out.resolve(name + ".png"), WIDTH, HEIGHT);
    }

    /** The page, and if every look is wanted the same page dark, at 200 %, at 250 % and from right to left. */
    void inAllLooks(String name) {
        photograph(name);
        if (!everyLook) {
            return;
        }
        look(s -> s.with(DeskSettings.Theme.DARK));
        photograph("dark-" + name);
        look(s -> s.with(DeskSettings.Theme.LIGHT).scaled(200));
        photograph("large-" + name);
        look(s -> s.scaled(250));
        photograph("huge-" + name);
        look(s -> s.scaled(100).mirrored(true));
        photograph("mirrored-" + name);
        look(s -> s.mirrored(false));
    }

    /** Pictures and papers come when they are drawn; a photograph waits for them. */
    static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
